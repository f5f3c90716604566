using System.ComponentModel;
using System.Diagnostics;

namespace SolarEconomics.Workbench;

/// <summary>Starts the reader's own browser. The only file that knows how each platform does it.</summary>
internal static class Browser
{
    public static bool TryOpen(string address)
    {
        try
        {
            using var started = Process.Start(Starter(address));
            return started is not null || OperatingSystem.IsWindows();
        }
        catch (Exception failure) when (failure is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            LocalLog.Current.Write(failure);
            return false;
        }
    }

    private static ProcessStartInfo Starter(string address) =>
        OperatingSystem.IsWindows() ? new(address) { UseShellExecute = true }
        : new(OperatingSystem.IsMacOS() ? "open" : "xdg-open", [address]) { UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true };
}
