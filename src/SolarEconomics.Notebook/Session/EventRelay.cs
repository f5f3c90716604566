namespace SolarEconomics.Notebook;

/// <summary>Hands events on, one at a time and in order, whichever thread they come from.</summary>
internal sealed class EventRelay
{
    private readonly Lock gate = new();
    private readonly List<Action<SessionEvent>> listeners = [];
    private SessionState state = SessionState.Starting;

    internal SessionState State
    {
        get { lock (gate) return state; }
    }

    internal IDisposable Listen(Action<SessionEvent> hear)
    {
        ArgumentNullException.ThrowIfNull(hear);
        lock (gate) listeners.Add(hear);
        return new Listening(this, hear);
    }

    internal void Raise(SessionEvent happened)
    {
        lock (gate) Tell(happened);
    }

    /// <summary>Changes the state and says so, if it is another one.</summary>
    internal void Become(SessionState next)
    {
        lock (gate)
        {
            if (state == next) return;
            state = next;
            Tell(new StateChanged(next));
        }
    }

    // A listener may stop listening while it is told.
    private void Tell(SessionEvent happened)
    {
        foreach (var listener in listeners.ToArray()) listener(happened);
    }

    private sealed class Listening(EventRelay relay, Action<SessionEvent> hear) : IDisposable
    {
        public void Dispose()
        {
            lock (relay.gate) relay.listeners.Remove(hear);
        }
    }
}
