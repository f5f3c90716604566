using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace SolarEconomics.Notebook.Tests;

public sealed class NbformatTests
{
    [NbformatFact]
    public async Task The_reference_library_finds_our_notebook_valid_and_writes_it_letter_for_letter()
    {
        var document = NotebookDocument.New();
        document.Insert(0, StepKind.Text, "# Sun ☀ 🌧\n\n\ttab \"quoted\" \\ and \u001b");
        var id = document.Insert(1, StepKind.Code, "var a = 1;\na").Id;
        document.SetTags(id, ["assumptions"]);
        document.SetRunNumber(id, 1);
        document.AddOutput(id, Outputs.Printed("stdout", "one\ntwo"));
        document.AddOutput(id, Outputs.Result(ResultFormatter.Format(new Finding("13 years", "until <then>"), CultureInfo.InvariantCulture), 1));
        var drawing = Plotly.NET.CSharp.Chart.Line<int, double, string>([1, 2], [3.5, 4]);
        document.AddOutput(id, Outputs.Shown(ResultFormatter.Format(drawing, CultureInfo.InvariantCulture)));
        document.AddOutput(id, Outputs.Failed(new StepError("E", "bad", ["step 1, line 2"])));
        document.Insert(2, StepKind.Other, "raw");
        using var folder = new TemporaryFolder();
        document.Save(folder.File("ours.ipynb"));
        const string Script = "import nbformat, sys; nb = nbformat.read(sys.argv[1], as_version=4); nbformat.validate(nb); sys.stdout.write(nbformat.writes(nb) + chr(10))";
        using var python = Process.Start(new ProcessStartInfo(NbformatFactAttribute.Python, ["-X", "utf8", "-c", Script, folder.File("ours.ipynb")])
        {
            RedirectStandardOutput = true, RedirectStandardError = true, StandardOutputEncoding = Encoding.UTF8, UseShellExecute = false,
        })!;
        var (written, complaint) = (python.StandardOutput.ReadToEndAsync(), python.StandardError.ReadToEndAsync());
        Assert.Equal("", await complaint);
        Assert.Equal(document.ToJson(), await written);
    }
}
