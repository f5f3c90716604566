using SolarEconomics.Workbench;

return await CommandLine.StartAsync(args, Io.Terminal());
