using System.Text;
using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>The plotly.js that the drawing package carries, so that it is stored once and no page loads it from elsewhere.</summary>
/// <remarks>Thread-safe. plotly.js is MIT-licensed; its notice stands at the head of the script.</remarks>
public static class PlotlyScript
{
    private const string Resource = "Plotly.NET.plotly-2.28.0.min.js";

    /// <summary>Version of plotly.js.</summary>
    public static string Version => "2.28.0";

    /// <summary>Size of the script. Unit: bytes.</summary>
    public static long LengthBytes
    {
        get
        {
            using var stream = Open();
            return stream.Length;
        }
    }

    /// <summary>Opens the script for copying to a response. UTF-8, without a byte order mark.</summary>
    public static Stream Open() =>
        typeof(GenericChart).Assembly.GetManifestResourceStream(Resource) ?? throw Throw.NoScript(Resource);

    /// <summary>The whole script as text; about 3.6 MB, read anew at each call.</summary>
    public static string Read()
    {
        using var reader = new StreamReader(Open(), Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
