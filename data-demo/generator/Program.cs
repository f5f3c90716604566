using AlderWeir;

// Writes the files of the invented site Alder Weir. Usage: dotnet run --project data-demo/generator [FOLDER]
if (args.Length > 1)
{
    Console.Error.WriteLine($"Found {args.Length} words, expected none or the folder to write to.");
    return 2;
}
var folder = args.Length == 1 ? args[0] : DemoFolder.Find(Environment.CurrentDirectory);
foreach (var (name, bytes) in Scenario.Make(Scenario.CommittedSeed).Files)
{
    File.WriteAllBytes(Path.Combine(folder, name), bytes);
    Console.WriteLine($"{name}: {bytes.Length} bytes");
}
return 0;
