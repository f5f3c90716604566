namespace SolarEconomics.Notebook.Tests;

/// <summary>Tests that share one session in a child process, with a warm spare behind it.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class ChildCollection : ICollectionFixture<ChildFixture>
{
    public const string Name = "child";
}

public sealed class ChildFixture : IAsyncLifetime
{
    private readonly SessionStarter starter = new(ChildMain.Program, keepSpare: true, memoryLimitBytes: 1L << 30)
    {
        // A busy test machine may take longer than the half second of a reader's.
        StopPatience = TimeSpan.FromSeconds(3),
    };

    public ISession Session { get; private set; } = null!;

    public Task InitializeAsync()
    {
        Session = starter.Open(new SessionOptions());
        return Task.CompletedTask;
    }

    public async Task DisposeAsync()
    {
        await Session.DisposeAsync();
        await starter.DisposeAsync();
    }
}
