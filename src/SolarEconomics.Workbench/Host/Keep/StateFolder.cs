namespace SolarEconomics.Workbench;

/// <summary>The folder of this installation and user for what belongs to no notebook: which code was let run, earlier versions.</summary>
/// <param name="Path">Full path; made when something is first written.</param>
internal sealed record StateFolder(string Path)
{
    /// <summary>Name of the environment variable that puts the folder elsewhere.</summary>
    public const string Variable = "SOLARECONOMICS_STATE";

    /// <summary>Where each platform keeps such things: on Linux <c>~/.local/share</c>, on macOS <c>~/Library/Application Support</c>, on Windows the local application data.</summary>
    public static StateFolder OfThisUser()
    {
        var elsewhere = Environment.GetEnvironmentVariable(Variable);
        if (!string.IsNullOrWhiteSpace(elsewhere)) return new(System.IO.Path.GetFullPath(elsewhere));
        var home = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return new(System.IO.Path.Combine(home.Length > 0 ? home : System.IO.Path.GetTempPath(), "SolarEconomics"));
    }

    public string File(string name) => System.IO.Path.Combine(Path, name);
}
