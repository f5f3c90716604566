namespace SolarEconomics.Notebook;

/// <summary>Why a step failed, without the lines of the engine.</summary>
/// <param name="Name">Kind of error, for example <c>CS0103</c> or <c>DivideByZeroException</c>.</param>
/// <param name="Message">What went wrong.</param>
/// <param name="Lines">Places in the reader's code and problems collected on the way, one per line.</param>
public sealed record StepError(string Name, string Message, IReadOnlyList<string> Lines)
{
    /// <summary>The message and its lines as one text.</summary>
    public override string ToString() => string.Join('\n', Lines.Prepend(Message));
}
