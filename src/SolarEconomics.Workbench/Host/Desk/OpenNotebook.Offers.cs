using System.Globalization;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <content>Other states of the notebook: left behind by a crash, written by another program, or an earlier version.</content>
internal sealed partial class OpenNotebook
{
    private static readonly TimeSpan LookAgain = TimeSpan.FromSeconds(2);
    private readonly Queue<Offer> offers = new();
    private readonly List<LeftJournal> taken = [];
    private NotebookDocument? shownInstead;

    private bool IsLookingElsewhere => shownInstead is not null;

    private void OfferWhatWasLeftBehind(string path)
    {
        foreach (var left in LeftJournal.Beside(path, document.State()))
        {
            var at = TimeZoneInfo.ConvertTime(left.At, time.LocalTimeZone).ToString("d MMM, HH:mm:ss", CultureInfo.InvariantCulture);
            offers.Enqueue(new Offer(OfferKind.LeftBehind, left.State, $"The program ended before the last changes were saved (the last one: {at}). They are not lost: look at both, then choose.", left));
        }
    }

    /// <summary>Looks whether another program changed the file, as long as pages look at the notebook.</summary>
    private void WatchFile() => _ = Task.Delay(LookAgain, time).ContinueWith(_ => Post(LookAtFile), TaskScheduler.Default);

    private void LookAtFile()
    {
        if (pages.Count == 0) { isWatchingFile = false; return; }
        // Once the reader has decided for the page, its state goes beside the file; until that is done nothing is asked again.
        if (offers.Count == 0 && !needsSaving && keeper.IsChangedOutside && ReadFile() is { } state)
        {
            if (state.IsSameAs(document.FileState())) keeper.Adopt();
            else OfferNext(new Offer(OfferKind.OnDisk, state, "Another program changed the notebook's file. Nothing is written over: look at both, then choose. The one that you do not go on with is kept too."));
        }
        WatchFile();
    }

    private NotebookState? ReadFile()
    {
        try { return NotebookDocument.Load(keeper.Path).State(); }
        catch (Exception failure) when (failure is NotebookFormatException || DiskWords.Is(failure))
        {
            // Half-written, or no notebook any more: looked at again in a moment; saving goes beside it.
            LocalLog.Current.Write(failure);
            return null;
        }
    }

    private void OfferNext(Offer offer)
    {
        offers.Enqueue(offer);
        different |= Told.Everything;
    }

    private void LookAtVersion(LookAtVersion ask, PageLine page)
    {
        if (offers.Count > 0) { page.Send(new Notice("Decide first which state of the notebook to go on with.")); return; }
        if (keeper.Versions.Read(ask.Name) is not { } state) { page.Send(new Notice("This version is gone.")); return; }
        var at = keeper.Versions.All.First(entry => entry.Name == ask.Name).At;
        OfferNext(new Offer(OfferKind.Version, state, $"The notebook as it was on {TimeZoneInfo.ConvertTime(at, time.LocalTimeZone).ToString("d MMM, HH:mm", CultureInfo.InvariantCulture)}."));
        Show(other: true);
    }

    private void Show(bool other)
    {
        if (!offers.TryPeek(out var offer)) return;
        shownInstead = other ? NotebookDocument.Parse(offer.State.ToJson()) : null;
        different |= Told.Everything;
    }

    /// <summary>Goes on with the other state; the present one can be had back by undo, and is kept as a version.</summary>
    private void Take()
    {
        if (!offers.TryDequeue(out var offer)) return;
        shownInstead = null;
        keeper.KeepVersion(document.State());
        history.Remember("take", Now);
        Become(shared.LetRun.Knows(NotebookDocument.Parse(offer.State.ToJson())), () => document.Return(offer.State));
        if (offer.Kind == OfferKind.OnDisk) keeper.Adopt();
        if (offer.Left is { } left) taken.Add(left);
        NextOffer();
    }

    /// <summary>Goes on with the present state; the other one stays where it can be found.</summary>
    private void Leave()
    {
        if (!offers.TryDequeue(out var offer)) return;
        shownInstead = null;
        if (offer.Kind == OfferKind.OnDisk)
        {
            needsSaving = true;
            if (offers.Count == 0) SaveNow();
        }
        if (offer.Left is { } left)
        {
            if (keeper.KeepVersion(left.State))
            {
                left.Delete();
                notices.Add("The changes are kept among the earlier versions, under Notebook.");
            }
            else notices.Add("The changes stay in their journal: they are offered again the next time.");
        }
        NextOffer();
    }

    private void NextOffer()
    {
        if (offers.Count == 0) room.WarmIf(mayRun && pages.Count > 0);
        different |= Told.Everything;
    }

    /// <summary>Journals whose content is now in the saved file have done their work.</summary>
    private void ForgetTakenJournals()
    {
        taken.ForEach(left => left.Delete());
        taken.Clear();
    }
}
