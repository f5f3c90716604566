using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace SolarEconomics.Workbench;

/// <summary>Methods that a step declares for objects, and whether a call changes its object: the reader's own classes, and extension methods.</summary>
internal static class OwnMethods
{
    public static IReadOnlyDictionary<string, bool> In(CompilationUnitSyntax root)
    {
        var found = new Dictionary<string, bool>(StringComparer.Ordinal);
        var methods = root.DescendantNodes().OfType<MethodDeclarationSyntax>().Where(method => method.Parent is TypeDeclarationSyntax || IsExtension(method)).ToList();
        foreach (var method in methods) found[method.Identifier.ValueText] = found.GetValueOrDefault(method.Identifier.ValueText) || ChangesItself(method);
        // A method that calls one that changes the object changes it too.
        for (var isDone = false; !isDone;)
        {
            var calling = methods.Where(method => !found[method.Identifier.ValueText] && method.DescendantNodes().OfType<InvocationExpressionSyntax>().Any(call =>
                call.Expression is IdentifierNameSyntax name && found.GetValueOrDefault(name.Identifier.ValueText))).ToList();
            foreach (var method in calling) found[method.Identifier.ValueText] = true;
            isDone = calling.Count == 0;
        }
        return found;
    }

    private static bool IsExtension(MethodDeclarationSyntax method) => method.ParameterList.Parameters is [{ } first, ..] && first.Modifiers.Any(word => word.ValueText == "this");

    private static bool ChangesItself(MethodDeclarationSyntax method)
    {
        var own = IsExtension(method) ? [method.ParameterList.Parameters[0].Identifier.ValueText] : MembersOf(method).Append("this").ToHashSet(StringComparer.Ordinal);
        var touched = FreeNames.In(method, own: own);
        return touched.Changes.Overlaps(own) || touched.Asked.Any(one => own.Contains(one.Name) && !KnownMethods.LeaveAlone(one.Method));
    }

    private static IEnumerable<string> MembersOf(MethodDeclarationSyntax method)
    {
        var type = (TypeDeclarationSyntax)method.Parent!;
        return type.Members.SelectMany(member => member switch
        {
            FieldDeclarationSyntax field => field.Declaration.Variables.Select(one => one.Identifier.ValueText),
            PropertyDeclarationSyntax property => [property.Identifier.ValueText],
            _ => [],
        }).Concat(type.ParameterList?.Parameters.Select(one => one.Identifier.ValueText) ?? []);
    }
}
