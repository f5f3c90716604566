namespace SolarEconomics;

/// <summary>One thing found in a record that is not as it should be.</summary>
/// <param name="File">File name as the user gave it.</param>
/// <param name="Line">Line in the file, counted from 1; 0 where the whole file is meant.</param>
/// <param name="Column">Field in the line, counted from 1; 0 where the whole line is meant.</param>
/// <param name="Raw">The raw text found, shortened to 200 characters.</param>
/// <param name="Found">What was found, in words.</param>
/// <param name="Expected">What was expected, and what to do, in words.</param>
/// <param name="Severity">Whether something was lost, is doubtful, or is only worth knowing.</param>
public sealed record Problem(string File, int Line, int Column, string Raw, string Found, string Expected, Severity Severity)
{
    /// <summary>Energy that stands in the record here and is in no total: of a row whose time does not exist, or of a repeat. Unit: kWh. Default: 0.</summary>
    public double UncountedKwh { get; init; }

    /// <summary>The same as a sentence, with a full stop where no question ends it.</summary>
    internal string Sentence => ToString() is var said && said.EndsWith('?') ? said : said + ".";

    /// <summary>Prints <c>meter.csv, line 12, column 3: found …, expected ….</c></summary>
    public override string ToString()
    {
        var where = File;
        if (Line > 0) where += FormattableString.Invariant($", line {Line}");
        if (Column > 0) where += FormattableString.Invariant($", column {Column}");
        return $"{where}: found {Found}, expected {Expected}";
    }
}
