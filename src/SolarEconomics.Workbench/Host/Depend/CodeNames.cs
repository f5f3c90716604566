using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace SolarEconomics.Workbench;

/// <summary>The names that a step defines for the steps below, and those it uses from above, as far as its text tells.</summary>
/// <param name="Declares">Variables, functions and types declared at the top.</param>
/// <param name="Touched">What it uses and changes without having declared it.</param>
/// <param name="Mentions">Every name that stands outside its functions and types: what is called when the step is worked out.</param>
/// <param name="Gives">Names that it hands to functions and methods, which may change what is behind them; with the name that the call is about.</param>
/// <param name="Aliases">Pairs of names that may stand for one object from here on.</param>
/// <param name="Functions">Functions that it declares, with what they touch wherever they are called.</param>
/// <param name="Methods">Methods that it declares for objects, with whether they change theirs.</param>
/// <param name="IsForAll">Whether it changes what every later step means: usings and directives.</param>
internal sealed record CodeNames(
    IReadOnlySet<string> Declares, Touched Touched, IReadOnlySet<string> Mentions, IReadOnlyList<(string Function, string Name)> Gives, IReadOnlyList<(string One, string Other)> Aliases,
    IReadOnlyDictionary<string, Touched> Functions, IReadOnlyDictionary<string, bool> Methods, bool IsForAll)
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    /// <summary>Names that the step does not declare itself before using them.</summary>
    public IReadOnlySet<string> Uses => Touched.Uses;

    /// <summary>What the steps below may see of it: declared or changed.</summary>
    public IReadOnlySet<string> Defines { get; } = Declares.Union(Touched.Changes, StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);

    public static CodeNames Of(string code)
    {
        var root = CSharpSyntaxTree.ParseText(code, Script).GetCompilationUnitRoot();
        var declared = root.Members.SelectMany(Declared).ToHashSet(StringComparer.Ordinal);
        var functions = root.Members.SelectMany(FunctionsOf).ToList();
        // A function changes something where it is called, not where it stands; a method of a type changes its own object.
        var elsewhere = functions.Select(function => function.Body).Concat(root.DescendantNodes().OfType<BaseTypeDeclarationSyntax>()).ToHashSet();
        var free = FreeNames.In(root, elsewhere);
        var uses = free.Uses.Where(name => !declared.Contains(name) || IsUsedBeforeDeclared(root, name)).ToHashSet(StringComparer.Ordinal);
        var touched = free with { Uses = uses, Changes = free.Changes.Except(declared, StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal) };
        var mentions = root.DescendantNodes(into => !elsewhere.Contains(into)).OfType<IdentifierNameSyntax>()
            .Where(name => FreeNames.IsFree(name) && !(name.Parent is AssignmentExpressionSyntax { RawKind: (int)SyntaxKind.SimpleAssignmentExpression } assignment && assignment.Left == name))
            .Select(name => name.Identifier.ValueText).ToHashSet(StringComparer.Ordinal);
        var gives = root.DescendantNodes().OfType<InvocationExpressionSyntax>().SelectMany(call => call.ArgumentList.Arguments.Select(given => given.Expression).OfType<IdentifierNameSyntax>()
            .SelectMany(given => ChangingCalls.Root(call.Expression).Select(function => (function, given.Identifier.ValueText))));
        return new CodeNames(declared, touched, mentions, [.. gives.Distinct()], [.. root.DescendantNodes().SelectMany(Workbench.Aliases.MadeBy).Distinct()],
            functions.DistinctBy(function => function.Name, StringComparer.Ordinal).ToDictionary(function => function.Name, function => FreeNames.In(function.Body), StringComparer.Ordinal),
            OwnMethods.In(root), root.Usings.Count > 0 || root.ContainsDirectives);
    }

    private static IEnumerable<(string Name, SyntaxNode Body)> FunctionsOf(MemberDeclarationSyntax member) => member switch
    {
        MethodDeclarationSyntax method => [(method.Identifier.ValueText, method)],
        GlobalStatementSyntax { Statement: LocalFunctionStatementSyntax function } => [(function.Identifier.ValueText, function)],
        FieldDeclarationSyntax field => field.Declaration.Variables.Where(one => one.Initializer?.Value is LambdaExpressionSyntax).Select(one => (one.Identifier.ValueText, (SyntaxNode)one.Initializer!.Value)),
        GlobalStatementSyntax { Statement: ExpressionStatementSyntax { Expression: AssignmentExpressionSyntax { Left: IdentifierNameSyntax name, Right: LambdaExpressionSyntax body } } } => [(name.Identifier.ValueText, body)],
        _ => [],
    };

    /// <summary>What a member at the top of the script leaves behind.</summary>
    private static IEnumerable<string> Declared(MemberDeclarationSyntax member) => member switch
    {
        FieldDeclarationSyntax field => field.Declaration.Variables.Select(variable => variable.Identifier.ValueText).Concat(Designated(field)),
        MethodDeclarationSyntax method => [method.Identifier.ValueText],
        PropertyDeclarationSyntax property => [property.Identifier.ValueText],
        BaseTypeDeclarationSyntax type => [type.Identifier.ValueText],
        DelegateDeclarationSyntax function => [function.Identifier.ValueText],
        GlobalStatementSyntax { Statement: ExpressionStatementSyntax statement } => Designated(statement),
        GlobalStatementSyntax { Statement: IfStatementSyntax choice } => Designated(choice.Condition),
        GlobalStatementSyntax { Statement: LocalDeclarationStatementSyntax local } => local.Declaration.Variables.Select(variable => variable.Identifier.ValueText),
        GlobalStatementSyntax { Statement: LocalFunctionStatementSyntax function } => [function.Identifier.ValueText],
        _ => [],
    };

    /// <summary>Names that stand in the middle of an expression, such as <c>out var kwh</c>; those inside a function of its own stay in there.</summary>
    private static IEnumerable<string> Designated(SyntaxNode node) =>
        node.DescendantNodes(into => into is not AnonymousFunctionExpressionSyntax).OfType<SingleVariableDesignationSyntax>().Select(name => name.Identifier.ValueText);

    private static bool IsUsedBeforeDeclared(CompilationUnitSyntax root, string name)
    {
        var declaredAt = root.Members.FirstOrDefault(member => Declared(member).Contains(name, StringComparer.Ordinal))?.SpanStart ?? 0;
        return root.DescendantNodes().OfType<IdentifierNameSyntax>().Any(used => used.SpanStart < declaredAt && used.Identifier.ValueText == name && FreeNames.IsFree(used));
    }
}
