namespace SolarEconomics.Charts.Tests;

/// <summary>How far two colours are apart for an eye: CIE 1976 ΔE in Lab (D65), with simulated deficiencies after Machado, Oliveira and Fernandes 2009 (severity 1.0).</summary>
internal static class ColourDistance
{
    internal static readonly IReadOnlyDictionary<string, double[,]> Eyes = new Dictionary<string, double[,]>(StringComparer.Ordinal)
    {
        ["normal"] = new[,] { { 1.0, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } },
        ["protanopia"] = new[,] { { 0.152286, 1.052583, -0.204868 }, { 0.114503, 0.786281, 0.099216 }, { -0.003882, -0.048116, 1.051998 } },
        ["deuteranopia"] = new[,] { { 0.367322, 0.860646, -0.227968 }, { 0.280085, 0.672501, 0.047413 }, { -0.011820, 0.042940, 0.968881 } },
        ["tritanopia"] = new[,] { { 1.255528, -0.076749, -0.178779 }, { -0.078411, 0.930809, 0.147602 }, { 0.004733, 0.691367, 0.303900 } },
    };

    internal static double Between(string a, string b, double[,] eye)
    {
        var (x, y) = (Lab(Seen(a, eye)), Lab(Seen(b, eye)));
        return Math.Sqrt(x.Zip(y).Sum(p => (p.First - p.Second) * (p.First - p.Second)));
    }

    /// <summary>Contrast of two colours as WCAG 2 defines it, from 1 to 21.</summary>
    internal static double Contrast(string a, string b)
    {
        var (x, y) = (Luminance(a), Luminance(b));
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    private static double Luminance(string colour)
    {
        var c = Linear(colour);
        return 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2];
    }

    private static double[] Linear(string colour) =>
        [.. new[] { 1, 3, 5 }.Select(i => Convert.ToInt32(colour.Substring(i, 2), 16) / 255.0).Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4))];

    private static double[] Seen(string colour, double[,] eye)
    {
        var c = Linear(colour);
        return [.. Enumerable.Range(0, 3).Select(r => Math.Clamp(eye[r, 0] * c[0] + eye[r, 1] * c[1] + eye[r, 2] * c[2], 0, 1))];
    }

    private static double[] Lab(double[] rgb)
    {
        var (r, g, b) = (rgb[0], rgb[1], rgb[2]);
        var x = F((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047);
        var y = F(0.2126729 * r + 0.7151522 * g + 0.0721750 * b);
        var z = F((0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / 1.08883);
        return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
    }

    private static double F(double t) => t > 216.0 / 24389 ? Math.Cbrt(t) : (24389.0 / 27 * t + 16) / 116;
}
