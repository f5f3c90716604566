namespace SolarEconomics.Charts.Tests;

/// <summary>As <see cref="BrowserFactAttribute"/>, for a test with cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute() => Skip = Chromium.WhyNot;
}
