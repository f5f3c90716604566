using NodaTime;

namespace SolarEconomics;

public sealed partial class Readings
{
    /// <summary>Clock of the site, in which local days are told. Default: UTC.</summary>
    public DateTimeZone Zone { get; init; } = DateTimeZone.Utc;

    /// <summary>How the columns of tables were understood, with reasons; a user corrects one by <see cref="ReadOptions.Columns"/>.</summary>
    public IReadOnlyList<ColumnMeaning> Columns { get; init; } = [];

    /// <summary>How far these readings can be trusted, and what was done about what was found.</summary>
    public ReadingsQuality Quality => new(this);

    /// <summary>Reads a file of readings in any format of the registry, with the clock and the devices of a site.</summary>
    /// <param name="path">Path, absolute or from the working folder.</param>
    /// <param name="site">Whose readings they are: its zone resolves local stamps, its plant names devices and opening values.</param>
    /// <param name="options">Choices that the record leaves open. Default: none; zone and plant of the site stand where the options name none.</param>
    /// <exception cref="RecordException">The file is missing, empty, of no known format, or nothing in it can be read. Gaps, repeats and broken rows are no failure: see <see cref="Quality"/>.</exception>
    public static Readings Load(string path, Site site, ReadOptions? options = null) => Load([path], site, options);

    /// <summary>Reads a file of readings that belongs to no described site; local days are told by the options' clock or the format's own.</summary>
    /// <param name="path">Path, absolute or from the working folder.</param>
    /// <param name="options">Choices that the record leaves open. A table with bare local stamps needs the zone.</param>
    /// <exception cref="RecordException">The file is missing, empty, of no known format, or nothing in it can be read.</exception>
    public static Readings Load(string path, ReadOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        var content = RecordReaders.Read(path, options);
        return Joining.Of([content], content.Clock);
    }

    /// <summary>Reads several files and lays their channels and counters side by side. Channels of one name, flow and meter are joined in time.</summary>
    /// <param name="paths">Paths, absolute or from the working folder; at least one.</param>
    /// <param name="site">Whose readings they are.</param>
    /// <param name="options">Choices that the records leave open.</param>
    /// <exception cref="RecordException">A file is missing, empty, of no known format, or nothing in it can be read.</exception>
    public static Readings Load(IEnumerable<string> paths, Site site, ReadOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(site);
        options ??= new ReadOptions();
        options = options with { Zone = options.Zone ?? site.Zone, Plant = options.Plant.Devices.Count > 0 ? options.Plant : site.Plant };
        var files = paths.ToList();
        using var work = WorkProgress.Begin();
        var contents = files.Select((p, at) => RecordReaders.Read(p, options with { Progress = work.Part(at, files.Count, options.Progress) })).ToList();
        if (contents.Count == 0) throw Throw.NoFile("");
        return Joining.Of(contents, site.Zone);
    }
}
