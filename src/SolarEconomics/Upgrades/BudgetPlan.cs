using System.Numerics;

namespace SolarEconomics;

/// <summary>Chooses among options under a budget by weighing every combination.</summary>
public static class BudgetPlan
{
    /// <summary>The most options that are enumerated: about a million combinations.</summary>
    public const int MostOptions = 20;

    /// <summary>The options worth most together.</summary>
    /// <param name="options">What could be bought. Shape: up to <see cref="MostOptions"/>; more of them go to the integer program of SolarEconomics.Solvers.</param>
    /// <param name="budget">What may be spent now. Range: 0 or more.</param>
    /// <exception cref="MixedMoneyException">Options and budget differ in currency or price basis.</exception>
    /// <exception cref="UnknownNameException">An option excludes or needs one that is not there.</exception>
    /// <exception cref="ArgumentException">A name stands twice, or there are too many options.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A budget or cost below 0.</exception>
    /// <remarks>Equation: max Σ worthᵢ·xᵢ with Σ costᵢ·xᵢ ≤ budget, xᵢ + xⱼ ≤ 1 where i excludes j, xᵢ ≤ xⱼ where i needs j, x 0 or 1. Exact in decimal money.</remarks>
    public static BudgetChoice Best(IEnumerable<BudgetOption> options, Money budget)
    {
        var problem = new BudgetProblem(options, budget);
        if (problem.Options.Count > MostOptions) throw Throw.TooManyOptions(problem.Options.Count, MostOptions);
        var best = new Enumeration(problem).Best();
        return BudgetChoice.Of(problem, i => (best >> i & 1) != 0);
    }

    /// <summary>Walks through all subsets, each one option away from one with fewer bits, so that sums carry on.</summary>
    private sealed class Enumeration
    {
        private readonly BudgetProblem _problem;
        private readonly int[] _excluded;
        private readonly int[] _needed;

        internal Enumeration(BudgetProblem problem)
        {
            _problem = problem;
            _excluded = new int[problem.Options.Count];
            _needed = new int[problem.Options.Count];
            foreach (var (a, b) in problem.Exclusions)
            {
                _excluded[a] |= 1 << b;
                _excluded[b] |= 1 << a;
            }
            foreach (var (option, needed) in problem.Needs) _needed[option] |= 1 << needed;
        }

        internal int Best()
        {
            var (best, bestCost, bestWorth) = (0, 0m, 0m);
            Visit(0, 0, 0, 0);
            return best;

            void Visit(int from, int chosen, decimal cost, decimal worth)
            {
                if (IsBetter(chosen, cost, worth) && HasWhatItNeeds(chosen)) (best, bestCost, bestWorth) = (chosen, cost, worth);
                for (var i = from; i < _excluded.Length; i++)
                {
                    var costWith = cost + _problem.Options[i].Cost.Amount;
                    // Costs are never negative: what is too dear stays so.
                    if (costWith > _problem.Budget.Amount || (_excluded[i] & chosen) != 0) continue;
                    Visit(i + 1, chosen | 1 << i, costWith, worth + _problem.Options[i].Worth.Amount);
                }
            }

            bool IsBetter(int chosen, decimal cost, decimal worth) =>
                worth > bestWorth || (worth == bestWorth && (cost < bestCost || (cost == bestCost && IsEarlier(chosen, best))));
        }

        private bool HasWhatItNeeds(int chosen)
        {
            for (var left = chosen; left != 0; left &= left - 1)
                if ((_needed[BitOperations.TrailingZeroCount(left)] & ~chosen) != 0) return false;
            return true;
        }

        /// <summary>Whether the first option in which two choices differ is in the first of them.</summary>
        private static bool IsEarlier(int chosen, int other)
        {
            var differ = chosen ^ other;
            return differ != 0 && (chosen & (differ & -differ)) != 0;
        }
    }
}
