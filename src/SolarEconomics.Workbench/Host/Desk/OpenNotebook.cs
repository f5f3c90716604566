using System.Threading.Channels;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>One open notebook: its document, its session and the pages that look at it. The host keeps it, so no page and no session can lose it.</summary>
/// <remarks>All that happens is done one thing at a time, in the order in which it came; after each batch the pages are told what is different.</remarks>
internal sealed partial class OpenNotebook : IAsyncDisposable
{
    private readonly Channel<Action> happenings = System.Threading.Channels.Channel.CreateUnbounded<Action>(new UnboundedChannelOptions { SingleReader = true });
    private readonly List<PageLine> pages = [];
    private readonly Dictionary<string, StepWork> works = new(StringComparer.Ordinal);
    private readonly HashSet<string> changedSteps = new(StringComparer.Ordinal);
    private readonly Keeper keeper;
    private readonly History history;
    private readonly Shared shared;
    private readonly TimeProvider time;
    private readonly Task loop;
    private readonly List<string> notices = [];
    private readonly NotebookDocument document;
    private const int Flood = 4;
    private static readonly TimeSpan Undisturbed = TimeSpan.FromMilliseconds(400);
    private Told different;
    private bool isWatchingFile;
    private bool mayRun;

    [Flags]
    private enum Told
    {
        Nothing = 0,
        Everything = 1,
        Work = 2,
        Assumptions = 4,
        Saved = 8,
        Session = 16,
    }

    public OpenNotebook(string path, Shared shared)
    {
        (this.shared, time) = (shared, shared.Time);
        document = NotebookDocument.Load(path);
        journaled = document.Edition;
        mayRun = shared.LetRun.Knows(document);
        keeper = new Keeper(path, document.State(), shared.State, time);
        history = new History(time);
        foreach (var step in document.Steps) works[step.Id] = new StepWork { State = FirstState(step) };
        room = new SessionRoom(shared.OpenSession, new SessionOptions { Folder = Path.GetDirectoryName(path)!, Culture = document.Culture }, told => Post(() => Hear(told)), Post);
        OfferWhatWasLeftBehind(path);
        lastAsked = time.GetTimestamp();
        WatchForIdle();
        loop = Task.Run(LoopAsync);
    }

    /// <summary>A page looks at the notebook from now on, and is told everything unless it has it.</summary>
    /// <param name="page">The page.</param>
    /// <param name="has">The mark of what came with the page's own file; empty where nothing did.</param>
    public void Join(PageLine page, string has = "") => Post(() =>
    {
        pages.Add(page);
        var everything = PageLine.Written(new Opened(View()));
        if (FirstLook.MarkOf(everything) != has) page.Send(everything);
        // The answers first: a session that warms up takes every processor that drawing them needs.
        After(Undisturbed, () =>
        {
            room.WarmIf(mayRun && offers.Count == 0 && pages.Count > 0);
            // The first change would otherwise wait for the parser and the known names to come up, and the journal behind it.
            _ = Task.Run(() => CodeNames.Of("var first = 1; var second = first.CompareTo(2);"));
        });
        if (isWatchingFile) return;
        isWatchingFile = true;
        WatchFile();
    });

    public void Leave(PageLine page) => Post(() => pages.Remove(page));

    /// <summary>A page asks for something.</summary>
    public void Ask(PageCommand command, PageLine page) => Post(() =>
    {
        lastAsked = time.GetTimestamp();
        try { Do(command, page); }
        catch (ArgumentException failure)
        {
            // A page that is behind names a step that is gone, or a place outside the notebook.
            LocalLog.Current.Write(failure);
            page.Send(new Notice($"{failure.Message.Split('\n')[0]} The page is brought up to date."));
            page.Send(new Opened(View()));
        }
    });

    /// <summary>The notebook's file as it would be saved now.</summary>
    public Task<string> TextAsync() => AskAsync(document.ToJson);

    /// <summary>The message that tells a page everything.</summary>
    public Task<byte[]> OpenedAsync() => AskAsync(() => PageLine.Written(new Opened(View())));

    private Task<T> AskAsync<T>(Func<T> read)
    {
        var answer = new TaskCompletionSource<T>(TaskCreationOptions.RunContinuationsAsynchronously);
        var isAsked = happenings.Writer.TryWrite(() =>
        {
            // Who asks must hear of a fault too: he would wait for ever.
            try { answer.SetResult(read()); }
            catch (Exception failure) { answer.SetException(failure); }
        });
        if (!isAsked) answer.SetCanceled();
        return answer.Task;
    }

    /// <summary>Rows of a table that a step answered with; null where the session does not hold it any more.</summary>
    public Task<TablePage?> TableAsync(TableQuery query) => room.ReadTableAsync(query);

    /// <summary>Ends when everything that came before is done and told. For tests.</summary>
    public Task SettledAsync()
    {
        var done = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        Post(() => Post(() => done.SetResult()));
        return done.Task;
    }

    private void Post(Action happening) => happenings.Writer.TryWrite(happening);

    private async Task LoopAsync()
    {
        while (await happenings.Reader.WaitToReadAsync())
        {
            var count = 0;
            for (; happenings.Reader.TryRead(out var happening); count++) Guarded(happening);
            Tell();
            KeepInAMoment();
            // Output that comes in a flood is told in batches; a single answer at once.
            if (count > Flood) await Task.Delay(15);
        }
    }

    /// <summary>A fault of ours must not end the loop, as the notebook would be lost with it: it is logged and told.</summary>
    private void Guarded(Action happening)
    {
        try { happening(); }
        catch (Exception failure) when (failure is not OutOfMemoryException)
        {
            LocalLog.Current.Write(failure);
            notices.Add($"Something went wrong in this program: {failure.Message} Your notebook is kept.");
            different |= Told.Everything;
        }
    }

    private void Tell()
    {
        var events = new List<PageEvent>();
        if (different.HasFlag(Told.Everything)) events.Add(new Opened(View()));
        else if (IsLookingElsewhere) different = Told.Nothing;
        else
        {
            events.AddRange(changedSteps.Select(document.Find).OfType<NotebookStep>().Select(step => new StepChanged(View(step))));
            if (different.HasFlag(Told.Assumptions)) events.Add(new AssumptionsChanged(AssumptionViews.Of(document)));
            if (different.HasFlag(Told.Work)) events.Add(new WorkChanged(Work()));
            if (different.HasFlag(Told.Saved)) events.Add(new Saved(saved));
            if (different.HasFlag(Told.Session)) events.Add(new SessionChanged(session));
        }
        events.AddRange(notices.Select(words => new Notice(words)));
        notices.Clear();
        changedSteps.Clear();
        different = Told.Nothing;
        if (pages.Count == 0) return;
        foreach (var written in events.Select(PageLine.Written)) pages.ForEach(page => page.Send(written));
    }

    public async ValueTask DisposeAsync()
    {
        Post(() =>
        {
            // Looking at an earlier version is no decision that would be waited for.
            if (offers.TryPeek(out var offer) && offer.Kind == OfferKind.Version) Leave();
            NoteNow();
            SaveNow();
            Tell();
            pages.ForEach(page => page.Close());
        });
        happenings.Writer.Complete();
        await loop;
        keeper.Dispose();
        await room.DisposeAsync();
    }
}
