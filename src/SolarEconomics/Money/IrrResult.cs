using System.Globalization;

namespace SolarEconomics;

/// <summary>Every rate of return of a flow, and how the search ended.</summary>
/// <param name="Roots">All rates above -100 % a year at which the value is 0, lowest first; a rate that only touches 0 stands once.</param>
/// <param name="End">How the search ended.</param>
/// <param name="Iterations">Steps taken, all roots together.</param>
/// <param name="Residual">Largest absolute value left at a root, in the unit of the amounts; 0 where there is no root.</param>
/// <param name="SignChanges">How often the sign changes along the flow: never fewer than there are rates.</param>
public sealed record IrrResult(IReadOnlyList<Rate> Roots, SolveEnd End, int Iterations, double Residual, int SignChanges) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var (figure, words) = End switch
        {
            SolveEnd.Root => (Print(Roots[0]), $"a year, {(Roots[0].IsReal ? "without inflation" : "inflation included")}, is the rate at which what is paid and what comes back are worth the same."),
            SolveEnd.SeveralRoots => (string.Join(", ", Roots.Select(Print)),
                "a year are all rates of return of this flow, so none of them ranks it: compare net present values at a rate of your own, or take the modified rate of return."),
            SolveEnd.NoSignChange => ("No rate", "of return: there is no payment, or nothing comes back. Check that year 0 holds the cost, as a negative amount."),
            SolveEnd.NoRealRoot => ("No rate", "of return: at no rate above -100 % a year is what is paid worth what comes back. Compare net present values at a rate of your own."),
            _ => ("Not found", "The search for a rate of return did not settle. Add payments up by month or year, and check the size of the amounts."),
        };
        return new Finding(figure, words)
        {
            Notes =
            [
                $"The sign of the flow changes {Wording.Count(SignChanges, "time", culture)}: never fewer than there are rates.",
                $"Found in {Wording.Count(Iterations, "step", culture)}; what is left of the value at a rate found is {Residual.ToString("0.0E+0", culture)} at most.",
            ],
            Cautions = ["Not investment advice. A rate of return says nothing about size: rank options by their net present value."],
        };

        string Print(Rate rate) => (rate.PerYear * 100).ToString("0.00", culture) + " %";
    }
}
