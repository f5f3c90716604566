namespace SolarEconomics.Benchmarks;

/// <summary>How long a reader of one notebook waits. Unit: seconds.</summary>
/// <param name="Answering">From the command to the page being served.</param>
/// <param name="Told">From the command to the notebook, with its saved answers, having reached the page.</param>
/// <param name="FirstAnswer">From there, with "work everything out" pressed at once, to the first step's answer.</param>
/// <param name="PerLaterStep">What each later step takes beyond its own work.</param>
/// <param name="AllAnswers">From pressing to the last step's answer, own work included.</param>
internal sealed record Waits(double Answering, double Told, double FirstAnswer, double PerLaterStep, double AllAnswers);
