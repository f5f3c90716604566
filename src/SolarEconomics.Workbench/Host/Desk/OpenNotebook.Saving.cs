namespace SolarEconomics.Workbench;

/// <content>Saving: soon after every change, and at once when asked.</content>
internal sealed partial class OpenNotebook
{
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(1.2);
    private string saved = "";
    private bool needsSaving;
    private bool saveIsDue;

    private void SaveInAMoment()
    {
        if (saveIsDue || !(document.IsChanged || needsSaving)) return;
        saveIsDue = true;
        _ = Task.Delay(Moment, time).ContinueWith(_ => Post(SaveNow), TaskScheduler.Default);
    }

    private void SaveNow()
    {
        saveIsDue = false;
        if (!document.IsChanged && !needsSaving && saved.Length > 0) return;
        saved = keeper.Save(document);
        needsSaving = false;
        different |= Told.Saved;
    }
}
