using System.CommandLine;
using SolarEconomics.Files;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>The whole command line: its verbs, the options that all of them have, and failures said in words.</summary>
internal static class CommandLine
{
    public static async Task<int> StartAsync(string[] args, Io io)
    {
        Console.OutputEncoding = System.Text.Encoding.UTF8;
        FileFormats.Register();
        var parsed = Root(io).Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors) await io.Error.WriteLineAsync(error.Message);
            await io.Error.WriteLineAsync("Run it with --help to see what can be asked, with examples.");
            return Exit.NotStarted;
        }
        using var log = LocalLog.Open(parsed.GetValue(LogOption), io);
        try
        {
            return await parsed.InvokeAsync(new InvocationConfiguration { Output = io.Out, Error = io.Error, EnableDefaultExceptionHandler = false });
        }
        catch (Exception failure) when (failure is RecordException or TariffException or UnknownNameException or UsageException or NotebookFormatException or IOException or UnauthorizedAccessException)
        {
            log.Write(failure);
            await io.Error.WriteLineAsync(failure.Message);
            return Exit.NotStarted;
        }
        catch (OperationCanceledException)
        {
            await io.Error.WriteLineAsync("Stopped by you.");
            return Exit.Failed;
        }
        catch (Exception failure)
        {
            // A fault of ours: its place goes to the log, which is safe to send; the person gets words.
            log.Write(failure);
            await io.Error.WriteLineAsync($"Something went wrong in this program: {failure.Message} Run it again with --log FILE; that file is safe to send.");
            return Exit.Failed;
        }
    }

    internal static readonly Option<FileInfo?> LogOption = new("--log")
    {
        Description = "Write what happens to this file, for a report of a fault. It stays on this machine and holds no readings and no addresses.",
        HelpName = "FILE",
        Recursive = true,
    };

    private static RootCommand Root(Io io)
    {
        var root = new RootCommand("""
            What has a home solar system been worth, when is it paid back, and is the next change worth its price?

            Examples:
              SolarEconomics.Workbench                                    offers the notebooks by the question each answers
              SolarEconomics.Workbench open notebooks/01-has-it-paid-for-itself.ipynb
              SolarEconomics.Workbench run notebooks/01-has-it-paid-for-itself.ipynb --set discountRate=0.04
              SolarEconomics.Workbench report notebooks/01-has-it-paid-for-itself.ipynb --bare --out report.html
              SolarEconomics.Workbench inspect meter.csv --zone Europe/Dublin
              SolarEconomics.Workbench bill --tariff plan.json --readings meter.csv --zone Europe/Dublin
              SolarEconomics.Workbench compare --tariffs tariffs --readings meter.csv --zone Europe/Dublin
            """);
        root.Options.Add(LogOption);
        var open = OpenVerb.Make(io);
        root.Subcommands.Add(open);
        root.Subcommands.Add(RunVerb.Make(io));
        root.Subcommands.Add(ReportVerb.Make(io));
        root.Subcommands.Add(InspectVerb.Make(io));
        root.Subcommands.Add(BillVerb.Make(io));
        root.Subcommands.Add(CompareVerb.Make(io));
        root.Subcommands.Add(SessionVerb.Make());
        OpenVerb.AlsoWithoutItsName(root, io);
        return root;
    }
}
