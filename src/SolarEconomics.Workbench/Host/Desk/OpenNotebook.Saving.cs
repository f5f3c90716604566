using System.Diagnostics;

namespace SolarEconomics.Workbench;

/// <content>Keeping: a journal within a moment of every change, the file soon after, and at once when asked.</content>
internal sealed partial class OpenNotebook
{
    private static readonly TimeSpan JournalPause = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan SavePause = TimeSpan.FromSeconds(1.2);
    private static readonly TimeSpan TryAgain = TimeSpan.FromSeconds(5);
    private TimeSpan journalTook;
    private TimeSpan saveTook;
    private string saved = "";
    private string journalProblem = "";
    private bool isSaveFailing;
    private bool needsSaving;
    private bool saveIsDue;
    private bool journalIsDue;
    private long journaled;

    private void KeepInAMoment()
    {
        if (!journalIsDue && document.Edition != journaled)
        {
            journalIsDue = true;
            // An answer of many megabytes must not keep the disk busy all the time.
            After(journalProblem.Length > 0 ? TryAgain : Longer(JournalPause, journalTook * 5), NoteNow);
        }
        if (saveIsDue || !(document.IsChanged || needsSaving) || offers.Count > 0) return;
        saveIsDue = true;
        After(isSaveFailing ? TryAgain : Longer(SavePause, saveTook * 10), SaveNow);
    }

    private void NoteNow()
    {
        journalIsDue = false;
        if (document.Edition == journaled) return;
        var watch = Stopwatch.StartNew();
        if (mayRun) shared.LetRun.Remember(document);
        var problem = keeper.Note(document.State());
        journalTook = watch.Elapsed;
        if (problem is null) journaled = document.Edition;
        if (problem is not null && problem != journalProblem) notices.Add(problem);
        journalProblem = problem ?? "";
        if (problem is not null || offers.Count == 0) return;
        saved = "Kept beside the file until you have chosen above";
        different |= Told.Saved;
    }

    private void SaveNow()
    {
        saveIsDue = false;
        // While the reader has not decided between two states, the file stays as it is; the journal keeps this one.
        if (offers.Count > 0 || (!document.IsChanged && !needsSaving && saved.Length > 0)) return;
        var watch = Stopwatch.StartNew();
        if (mayRun) shared.LetRun.Remember(document);
        (var isSaved, saved) = keeper.Save(document);
        saveTook = watch.Elapsed;
        isSaveFailing = !isSaved;
        needsSaving &= !isSaved;
        if (isSaved)
        {
            ForgetTakenJournals();
            (journaled, journalProblem) = (document.Edition, "");
        }
        different |= Told.Saved;
    }

    /// <summary>Saving by hand while another program's file waits for a decision is the decision to keep both.</summary>
    private void SaveAsked()
    {
        if (offers.TryPeek(out var offer) && offer.Kind == OfferKind.OnDisk) Leave();
        if (offers.Count > 0) notices.Add("Choose first which state of the notebook to go on with. Until then the file stays as it is, and your changes are kept beside it.");
        SaveNow();
    }

    private void After(TimeSpan pause, Action then) => _ = Task.Delay(pause, time).ContinueWith(_ => Post(then), TaskScheduler.Default);

    private static TimeSpan Longer(TimeSpan a, TimeSpan b) => a > b ? a : b;
}
