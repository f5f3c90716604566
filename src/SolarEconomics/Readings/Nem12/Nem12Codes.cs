namespace SolarEconomics;

/// <summary>Words for the codes of NEM12, as messages use them. Source: readings-nem12.</summary>
internal static class Nem12Codes
{
    internal static string RecordWord(string kind) => kind switch
    {
        "100" => "header",
        "200" => "stream details",
        "300" => "interval data",
        "400" => "interval event",
        "500" => "B2B details",
        "900" => "end",
        _ => "no record",
    };

    internal static string QualityWord(char letter) => letter switch
    {
        'A' => "actual",
        'E' => "forward estimate",
        'F' => "final substitute",
        'N' => "null",
        'S' => "substitute",
        'V' => "variable",
        _ => "no quality",
    };
}
