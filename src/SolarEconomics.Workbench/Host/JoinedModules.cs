using System.Text;
using System.Text.RegularExpressions;

namespace SolarEconomics.Workbench;

/// <summary>The page's small modules as one script, so that a browser asks once instead of fifty times before it shows an answer.</summary>
/// <remarks>Each module stays a scope of its own: a function that gives what the module exports. Understood are the forms that our own modules use,
/// <c>import { a, b } from "./x.js"</c> and <c>export</c> before a function or a constant; anything else stays as it is and the browser says so.
/// What a module loads later, by <c>import("…")</c>, stays a file of its own.</remarks>
internal static partial class JoinedModules
{
    /// <summary>The script that works like the module of this name.</summary>
    /// <param name="entry">File name of the module that uses the others.</param>
    /// <param name="read">Text of a module by its file name.</param>
    public static string Of(string entry, Func<string, string> read)
    {
        var script = new StringBuilder("\"use strict\";\nconst of = {};\n");
        Add(entry, read, script, []);
        return script.ToString();
    }

    private static void Add(string name, Func<string, string> read, StringBuilder script, HashSet<string> known)
    {
        if (!known.Add(name)) return;
        var text = read(name);
        foreach (Match import in Import().Matches(text)) Add(import.Groups["from"].Value, read, script, known);
        var exports = Export().Matches(text).Select(match => match.Groups["name"].Value);
        var body = Export().Replace(Import().Replace(text, "const {${names}} = of[\"${from}\"];"), "${what} ${name}");
        script.Append($"of[\"{name}\"] = await (async () => {{\n{body}\nreturn {{ {string.Join(", ", exports)} }};\n}})();\n");
    }

    [GeneratedRegex("""^import \{(?<names>[^}]*)\} from "\./(?<from>[\w.-]+)";""", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Import();

    [GeneratedRegex(@"^export (?<what>async function|function|const) (?<name>\w+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Export();
}
