using System.Reflection;

namespace SolarEconomics.Tests;

public sealed class PublishedRowsTests
{
    private static readonly (MethodInfo Method, PublishedRowsAttribute Rows)[] Checks =
        [.. from type in typeof(PublishedRowsTests).Assembly.GetTypes()
            from method in type.GetMethods()
            let rows = method.GetCustomAttribute<PublishedRowsAttribute>()
            where rows is not null
            select (method, rows)];

    [Fact]
    public void Every_check_fails_when_its_expected_value_is_moved()
    {
        var blind = new List<string>();
        foreach (var (method, rows) in Checks)
        {
            foreach (var id in rows.Ids.Where(id => Published.Rows[id].Disputed.Length == 0))
            {
                foreach (var steps in new[] { -1, +1 })
                {
                    if (!Fails(method, id, steps)) blind.Add($"{id} moved by {steps}");
                }
            }
        }
        Assert.Empty(blind);
    }

    [Fact]
    public void Every_row_has_a_check_and_every_check_has_a_row()
    {
        var checks = Checks.Select(c => c.Rows.Check).ToHashSet();
        Assert.Empty(Published.Rows.Values.Where(r => !checks.Contains(r.Check)).Select(r => $"{r.Id}: no check \"{r.Check}\""));
        Assert.Empty(Checks.Where(c => !c.Rows.Ids.Any()).Select(c => $"{c.Method.Name}: no row of kind \"{c.Rows.Check}\""));
    }

    [Theory]
    [InlineData("5e-9", "0.373362535", 0.37336253352, true)]
    [InlineData("5e-9", "0.373362535", 0.37336254100, false)]
    [InlineData("2 decimals", "9.69", 9.6871, true)]
    [InlineData("2 decimals", "9.69", 9.6951, false)]
    [InlineData("exact", "-300", -300.0, true)]
    [InlineData("exact", "0.3", 0.1 + 0.2, true)]
    [InlineData("exact", "0.3", 0.30000000001, false)]
    [InlineData("1e-7 relative", "1829.15146461355", 1829.1515, true)]
    [InlineData("1e-7 relative", "1829.15146461355", 1829.1517, false)]
    [InlineData("1e-7", "1", double.NaN, false)]
    public void A_tolerance_lets_pass_what_it_says(string tolerance, string expected, double got, bool agrees) =>
        Assert.Equal(agrees, new PublishedTolerance(tolerance).Checked().Difference(expected, got) is null);

    [Theory]
    [InlineData("5e-9", "1", "1.000000015")]
    [InlineData("2 decimals", "9.69", "9.70")]
    [InlineData("exact", "14,5 h", "14,5 h~")]
    [InlineData("exact", "1.23456", "1.23457")]
    [InlineData("exact", "60", "61")]
    public void An_expected_value_moves_by_three_tolerances_or_one_unit(string tolerance, string expected, string moved) =>
        Assert.Equal(moved, new PublishedTolerance(tolerance).Move(expected, 1));

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("about 3")]
    public void A_row_without_a_usable_tolerance_is_refused(string tolerance) =>
        Assert.Throws<FormatException>(() => new PublishedTolerance(tolerance).Checked());

    private static bool Fails(MethodInfo method, string id, int steps)
    {
        var test = Activator.CreateInstance(method.DeclaringType!);
        try
        {
            Published.WithExpectedMoved(steps, () => method.Invoke(test, [id]));
            return false;
        }
        catch (TargetInvocationException failure) when (failure.InnerException is PublishedDisagreement)
        {
            return true;
        }
        finally
        {
            (test as IDisposable)?.Dispose();
        }
    }
}
