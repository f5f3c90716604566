using System.Reflection;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;

namespace SolarEconomics.Workbench.Tests;

/// <summary>The names of messages and states are written once in the host; the page's own list is compared with them.</summary>
public partial class MessageNamesTests
{
    private static readonly string Scripts = Path.Combine(AppContext.BaseDirectory, "wwwroot", "js");

    [Theory]
    [InlineData("ask", typeof(PageCommand))]
    [InlineData("told", typeof(PageEvent))]
    public void The_page_and_the_host_know_the_same_messages(string list, Type messages) => Assert.Equal(
        messages.GetCustomAttributes<JsonDerivedTypeAttribute>().Select(one => (string)one.TypeDiscriminator!).Order(StringComparer.Ordinal),
        NamesIn("messages.js", list).Order(StringComparer.Ordinal));

    [Fact]
    public void The_page_asks_for_every_extent_that_the_host_knows() => Assert.Equal(
        typeof(Extent).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => field.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()!.Name).Order(StringComparer.Ordinal),
        NamesIn("messages.js", "extent").Order(StringComparer.Ordinal));

    [Fact]
    public void The_page_has_a_word_and_a_shape_for_every_state()
    {
        var states = Enum.GetNames<StepState>().Select(name => name.ToLowerInvariant()).ToList();
        Assert.Equal(states.Order(StringComparer.Ordinal), NamesIn("words.js", "stateWords").Order(StringComparer.Ordinal));
        var style = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "wwwroot", "css", "page.css"));
        foreach (var state in states.Where(state => state != "none")) Assert.Contains($".outline .{state}::before", style, StringComparison.Ordinal);
    }

    private static IEnumerable<string> NamesIn(string file, string list)
    {
        var text = File.ReadAllText(Path.Combine(Scripts, file));
        var block = Regex.Match(text, $@"export const {list} = Object\.freeze\(\{{(?<names>.*?)\}}\)", RegexOptions.Singleline | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(2)).Groups["names"].Value;
        return Entry().Matches(block).Select(match => match.Groups["name"].Value);
    }

    [GeneratedRegex(@"^\s*(?<name>\w+): "".*?"",", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Entry();
}
