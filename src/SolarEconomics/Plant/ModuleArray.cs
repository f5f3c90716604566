namespace SolarEconomics;

/// <summary>Modules of one type, wired alike, on one plane: so many in series, so many of these strings in parallel.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed record ModuleArray
{
    /// <summary>An array.</summary>
    /// <param name="name">Name of the array, as the plant's owner says it.</param>
    /// <param name="module">Type of the modules.</param>
    /// <param name="inSeries">Modules in series in one string. Range: 1 to 100.</param>
    /// <param name="strings">Strings in parallel. Range: 1 to 1,000.</param>
    /// <param name="plane">How the modules are laid.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is outside its range.</exception>
    public ModuleArray(string name, ModuleType module, int inSeries, int strings, Plane plane)
        : this(name, module, inSeries, strings, new Face(name, plane))
    {
    }

    /// <summary>An array on a face of the plant.</summary>
    /// <param name="name">Name of the array, as the plant's owner says it.</param>
    /// <param name="module">Type of the modules.</param>
    /// <param name="inSeries">Modules in series in one string. Range: 1 to 100.</param>
    /// <param name="strings">Strings in parallel. Range: 1 to 1,000.</param>
    /// <param name="face">Where the modules lie.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is outside its range.</exception>
    public ModuleArray(string name, ModuleType module, int inSeries, int strings, Face face)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(module);
        ArgumentNullException.ThrowIfNull(face);
        Name = name;
        Module = module;
        InSeries = inSeries;
        Strings = strings;
        Face = face;
    }

    /// <summary>Name of the array.</summary>
    public string Name { get; init; }

    /// <summary>Type of the modules.</summary>
    public ModuleType Module { get; }

    /// <summary>Modules in series in one string.</summary>
    public int InSeries { get; init => field = (int)Require.Within(value, 1, 100, "modules in series"); }

    /// <summary>Strings in parallel.</summary>
    public int Strings { get; init => field = (int)Require.Within(value, 1, 1000, "strings in parallel"); }

    /// <summary>Where the modules lie.</summary>
    public Face Face { get; init; }

    /// <summary>How the modules are laid.</summary>
    public Plane Plane
    {
        get => Face.Plane;
        init => Face = Face with { Plane = value };
    }

    /// <summary>How the modules shed heat. Default: <see cref="Mounting.OpenRack"/>.</summary>
    public Mounting Mounting
    {
        get => Face.Mounting;
        init => Face = Face with { Mounting = value };
    }

    /// <summary>Share of the rating that these modules still give, beside the model's own factor of age. Range: 0 to 1. Default: 1.</summary>
    public double AgeFactor { get; init => field = Require.Fraction(value, nameof(AgeFactor)); } = 1;

    /// <summary>The cable to its device. Default: <see langword="null"/>, not described; the model's own share then holds.</summary>
    public Cable? Cable { get; init; }

    /// <summary>Number of modules.</summary>
    public int Count => InSeries * Strings;

    /// <summary>Rated power of all modules. Unit: kWp.</summary>
    public double RatedKwp => Count * Module.RatedW / 1000;

    /// <summary>Rated power of the array over that of the inverter behind it: above 1 it clips on the brightest hours.</summary>
    /// <param name="inverter">The inverter.</param>
    public double DcToAcRatio(InverterType inverter)
    {
        ArgumentNullException.ThrowIfNull(inverter);
        return RatedKwp / (inverter.RatedAcW / 1000);
    }
}
