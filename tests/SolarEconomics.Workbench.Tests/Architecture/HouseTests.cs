using System.Reflection;
using System.Text.RegularExpressions;

namespace SolarEconomics.Workbench.Tests;

public partial class HouseTests
{
    [Fact]
    public void The_root_holds_what_the_card_lists_and_nothing_else()
    {
        string[] expected =
        [
            "README.md", "DEVELOPERS.md", "LICENSE", "SolarEconomics.sln", "global.json", "Directory.Build.props", "Directory.Packages.props",
            "notebooks", "src", "tests", "data-demo", "artifacts", "bin", "obj", "TestResults",
        ];
        var found = Directory.EnumerateFileSystemEntries(Repository.Root).Select(p => Path.GetFileName(p)!).Where(n => !n.StartsWith('.'));
        Assert.Empty(found.Except(expected));
    }

    [Fact]
    public void No_source_file_is_too_long_to_read_in_one_go() =>
        Assert.Empty(Repository.Sources("src", "*.cs").Concat(Repository.Sources("tests", "*.cs")).Concat(Repository.Sources("data-demo", "*.cs"))
            .Where(path => File.ReadLines(path).Count() > 300).Select(path => Path.GetRelativePath(Repository.Root, path)));

    [Fact]
    public void Half_of_the_source_files_are_under_80_lines()
    {
        var lengths = Repository.Sources("src", "*.cs").Select(path => File.ReadLines(path).Count()).Order().ToList();
        Assert.True(lengths[lengths.Count / 2] < 80, $"The median file has {lengths[lengths.Count / 2]} lines.");
    }

    [Fact]
    public void A_file_holds_one_public_type_and_bears_its_name()
    {
        var others = new List<string>();
        foreach (var path in Repository.Sources("src", "*.cs"))
        {
            var types = PublicType().Matches(File.ReadAllText(path)).Select(m => m.Groups["name"].Value).Distinct(StringComparer.Ordinal).ToList();
            var name = Path.GetFileNameWithoutExtension(path).Split('.')[0];
            if (types.Count > 1 || (types.Count == 1 && types[0] != name))
                others.Add($"{Path.GetRelativePath(Repository.Root, path)}: {string.Join(", ", types)}");
        }
        Assert.Empty(others);
    }

    [Fact]
    public void No_folder_or_type_is_a_drawer_for_everything() =>
        Assert.Empty(Repository.Sources("src", "*.cs").Where(path => Drawer().IsMatch(Path.GetRelativePath(Repository.Root, path))));

    [Fact]
    public void Public_names_use_the_one_word_for_each_concept()
    {
        var refused = File.ReadLines(Repository.File("src", "SolarEconomics", "WORDS.md"))
            .Select(line => NotThese().Match(line)).Where(m => m.Success)
            .SelectMany(m => m.Groups["words"].Value.Split(',', StringSplitOptions.TrimEntries))
            .Where(word => !word.Contains(' '))
            .ToList();
        Assert.NotEmpty(refused);
        var names = Assembly.Load("SolarEconomics").GetExportedTypes().SelectMany(t => t.GetMembers().Select(m => $"{t.Name}.{m.Name}").Append(t.Name));
        Assert.Empty(names.Where(name => refused.Any(word => name.Contains(word, StringComparison.Ordinal))));
    }

    [Fact]
    public void Every_source_key_in_a_doc_comment_is_explained()
    {
        var known = File.ReadLines(Repository.File("src", "SolarEconomics", "SOURCES.md"))
            .Where(line => line.StartsWith("- ", StringComparison.Ordinal)).Select(line => line[2..].Split(':')[0]).ToHashSet(StringComparer.Ordinal);
        var used = Repository.Sources("src", "*.cs").SelectMany(path => SourceKey().Matches(File.ReadAllText(path)))
            .SelectMany(m => m.Groups["key"].Captures.Select(c => c.Value)).Distinct(StringComparer.Ordinal);
        Assert.Empty(used.Except(known));
    }

    [Fact]
    public void Nothing_is_left_behind() =>
        Assert.Empty(Repository.Sources("src", "*.cs").Concat(Repository.Sources("src", "*.js"))
            .Where(path => LeftBehind().IsMatch(File.ReadAllText(path))).Select(path => Path.GetRelativePath(Repository.Root, path)));

    [Fact]
    public void The_changelog_starts_with_the_version_of_the_build()
    {
        var version = Assembly.Load("SolarEconomics").GetName().Version!;
        var first = File.ReadLines(Repository.File("src", "CHANGELOG.md")).First(line => line.StartsWith("## ", StringComparison.Ordinal));
        Assert.StartsWith($"## {version.Major}.{version.Minor}.{version.Build} (", first);
    }

    [GeneratedRegex(@"^public (?:static |sealed |abstract |readonly |partial |ref )*(?:class|struct|record struct|record|interface|enum|delegate) (?<name>\w+)", RegexOptions.Multiline)]
    private static partial Regex PublicType();

    [GeneratedRegex(@"Utils|Helpers?\b|Manager")]
    private static partial Regex Drawer();

    [GeneratedRegex(@"\(not: (?<words>[^)]+)\)")]
    private static partial Regex NotThese();

    [GeneratedRegex(@"Source: (?<key>[a-z]+-[a-z0-9]+)(?:, (?<key>[a-z]+-[a-z0-9]+))*")]
    private static partial Regex SourceKey();

    [GeneratedRegex(@"\b(TODO|FIXME|HACK|NotImplementedException)\b")]
    private static partial Regex LeftBehind();
}
