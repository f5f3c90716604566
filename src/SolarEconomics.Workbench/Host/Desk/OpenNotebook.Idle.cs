namespace SolarEconomics.Workbench;

/// <content>A session that nobody uses is closed, so that a forgotten page holds no memory.</content>
internal sealed partial class OpenNotebook
{
    private static readonly TimeSpan Idle = TimeSpan.FromMinutes(30);
    private static readonly TimeSpan LookForIdle = TimeSpan.FromMinutes(1);
    private long lastAsked;

    private void WatchForIdle() => After(LookForIdle, () =>
    {
        if (room.IsOpen && atWork is null && waiting.Count == 0 && time.GetElapsedTime(lastAsked) >= Idle)
        {
            ForgetValues();
            Watch(room.CloseAsync());
            session = new SessionView("The session was closed after 30 minutes without work, so that it holds no memory. Steps and answers stay; working a step out starts a fresh one.");
            different |= Told.Session;
        }
        WatchForIdle();
    });
}
