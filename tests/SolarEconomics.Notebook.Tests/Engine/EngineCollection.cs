namespace SolarEconomics.Notebook.Tests;

/// <summary>The engine uses the console and the current folder of the whole process: its tests run one after the other, in one session where they can.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class EngineCollection : ICollectionFixture<EngineFixture>
{
    public const string Name = "engine";
}

/// <summary>One warm session for many tests; each uses names of its own.</summary>
public sealed class EngineFixture : IAsyncLifetime
{
    public EngineSession Session { get; private set; } = null!;

    public async Task InitializeAsync() => Session = await EngineSession.StartAsync(new SessionOptions());

    public async Task DisposeAsync() => await Session.DisposeAsync();
}
