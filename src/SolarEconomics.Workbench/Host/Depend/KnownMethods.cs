using System.Collections;
using System.Collections.Concurrent;
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text.RegularExpressions;

namespace SolarEconomics.Workbench;

/// <summary>Methods that are known to leave their object as it is, by name: those of the library, whose results never change, of the libraries beside it, and of the runtime's plain values and collections.</summary>
/// <remarks>Read from the files' tables without loading them: the page's host needs most of them for nothing else.</remarks>
internal static class KnownMethods
{
    private static readonly string[] Libraries =
        ["SolarEconomics", "SolarEconomics.Charts", "SolarEconomics.Files", "SolarEconomics.Solvers", "SolarEconomics.Notebook", "NodaTime", "Deedle", "MathNet.Numerics", "Plotly.NET", "Plotly.NET.CSharp"];

    private static readonly Type[] Plain =
    [
        typeof(object), typeof(string), typeof(bool), typeof(char), typeof(int), typeof(long), typeof(double), typeof(decimal), typeof(DateTime), typeof(DateTimeOffset), typeof(DateOnly), typeof(TimeOnly),
        typeof(TimeSpan), typeof(Guid), typeof(Math), typeof(Convert), typeof(Enum), typeof(Type), typeof(Tuple), typeof(Nullable<>), typeof(Regex), typeof(Match), typeof(Group), typeof(Task), typeof(Task<>),
        typeof(Enumerable), typeof(MemoryExtensions), typeof(Array), typeof(IEnumerable), typeof(List<>), typeof(Dictionary<,>), typeof(HashSet<>), typeof(Queue<>), typeof(Stack<>), typeof(SortedDictionary<,>),
        typeof(SortedSet<>), typeof(LinkedList<>), typeof(ConcurrentDictionary<,>), typeof(IReadOnlyDictionary<,>), typeof(CollectionExtensions), typeof(Path), typeof(File), typeof(Directory), typeof(Random),
    ];

    private static readonly Lazy<HashSet<string>> Names = new(Read);

    /// <summary>Whether a method of this name leaves its object alone, as far as is known.</summary>
    public static bool LeaveAlone(string method) => !ChangingCalls.IsVerb(method) && Names.Value.Contains(method);

    private static HashSet<string> Read()
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var type in Plain)
            names.UnionWith(type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static).Where(method => method.ReturnType != typeof(void)).Select(method => method.Name));
        foreach (var file in Libraries.Select(name => Path.Combine(AppContext.BaseDirectory, name + ".dll")).Where(File.Exists)) AddOf(file, names);
        return names;
    }

    private static void AddOf(string file, HashSet<string> names)
    {
        using var image = new PEReader(File.OpenRead(file));
        var tables = image.GetMetadataReader();
        foreach (var method in tables.MethodDefinitions.Select(tables.GetMethodDefinition))
        {
            if ((method.Attributes & MethodAttributes.MemberAccessMask) == MethodAttributes.Public && GivesValue(tables.GetBlobReader(method.Signature))) names.Add(tables.GetString(method.Name));
        }
    }

    /// <summary>A method that gives nothing can only have an effect.</summary>
    private static bool GivesValue(BlobReader signature)
    {
        if (signature.ReadSignatureHeader().IsGeneric) signature.ReadCompressedInteger();
        signature.ReadCompressedInteger();
        return signature.ReadSignatureTypeCode() != SignatureTypeCode.Void;
    }
}
