namespace SolarEconomics.Notebook;

internal static partial class Throw
{
    internal static NotebookFormatException NewerJournal(string path, int version) =>
        new(FormattableString.Invariant($"{path}: found a journal of version {version}, expected version {JournalLine.Version} or older. ") +
            "A newer version of this program wrote it: open the notebook with that one, so that its last changes are not lost.");
}
