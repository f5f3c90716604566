using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace SolarEconomics.Workbench;

/// <summary>The names that a step defines for the steps below, and those it uses from above, as far as its text tells.</summary>
/// <param name="Declares">Variables, functions and types declared at the top.</param>
/// <param name="Changes">What is assigned, or may be changed by a call, without being declared here.</param>
/// <param name="Uses">Names that the step does not declare itself before using them.</param>
/// <param name="Gives">Names that it hands to functions of the notebook, which may change what is behind them; with the function's name.</param>
/// <param name="Aliases">Pairs of names that may stand for one object from here on.</param>
/// <param name="Functions">Functions that it declares, with what they use and change.</param>
/// <param name="IsForAll">Whether it changes what every later step means: usings and directives.</param>
internal sealed record CodeNames(
    IReadOnlySet<string> Declares, IReadOnlySet<string> Changes, IReadOnlySet<string> Uses, IReadOnlyList<(string Function, string Name)> Gives,
    IReadOnlyList<(string One, string Other)> Aliases, IReadOnlyDictionary<string, FunctionNames> Functions, bool IsForAll)
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    /// <summary>What the steps below may see of it: declared or changed.</summary>
    public IReadOnlySet<string> Defines { get; } = Declares.Union(Changes, StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);

    public static CodeNames Of(string code)
    {
        var root = CSharpSyntaxTree.ParseText(code, Script).GetCompilationUnitRoot();
        var declared = root.Members.SelectMany(Declared).ToHashSet(StringComparer.Ordinal);
        // A function changes something where it is called, not where it stands.
        var (uses, changes) = FreeIn(root, root.Members.SelectMany(FunctionsOf).Select(function => function.Body).ToHashSet());
        uses.RemoveWhere(name => declared.Contains(name) && !IsUsedBeforeDeclared(root, name));
        changes.ExceptWith(declared);
        var calls = root.DescendantNodes().OfType<InvocationExpressionSyntax>().ToList();
        var gives = calls.Where(call => call.Expression is not MemberAccessExpressionSyntax || ChangingCalls.Root(call.Expression).Any())
            .SelectMany(call => call.ArgumentList.Arguments.Select(given => given.Expression).OfType<IdentifierNameSyntax>()
                .SelectMany(given => ChangingCalls.Root(call.Expression).Select(function => (function, given.Identifier.ValueText))));
        return new CodeNames(declared, changes, uses, [.. gives.Distinct()], [.. root.DescendantNodes().SelectMany(Aliased)], FunctionsIn(root), root.Usings.Count > 0 || root.ContainsDirectives);
    }

    /// <summary>Names that a piece of code uses and changes without having made them itself.</summary>
    private static (HashSet<string> Uses, HashSet<string> Changes) FreeIn(SyntaxNode code, HashSet<SyntaxNode>? changingElsewhere = null)
    {
        var inner = code.DescendantNodesAndSelf().SelectMany(DeclaredInside).ToHashSet(StringComparer.Ordinal);
        var uses = code.DescendantNodes().OfType<IdentifierNameSyntax>().Where(IsFree).Select(name => name.Identifier.ValueText).ToHashSet(StringComparer.Ordinal);
        var changes = code.DescendantNodes(into => changingElsewhere?.Contains(into) != true).SelectMany(Changed).ToHashSet(StringComparer.Ordinal);
        uses.ExceptWith(inner);
        changes.ExceptWith(inner);
        return (uses, changes);
    }

    private static Dictionary<string, FunctionNames> FunctionsIn(CompilationUnitSyntax root)
    {
        var found = new Dictionary<string, FunctionNames>(StringComparer.Ordinal);
        foreach (var (name, body) in root.Members.SelectMany(FunctionsOf))
        {
            var (uses, changes) = FreeIn(body);
            found[name] = new FunctionNames(uses, changes);
        }
        return found;
    }

    private static IEnumerable<(string Name, SyntaxNode Body)> FunctionsOf(MemberDeclarationSyntax member) => member switch
    {
        MethodDeclarationSyntax method => [(method.Identifier.ValueText, method)],
        GlobalStatementSyntax { Statement: LocalFunctionStatementSyntax function } => [(function.Identifier.ValueText, function)],
        FieldDeclarationSyntax field => field.Declaration.Variables.Where(one => one.Initializer?.Value is LambdaExpressionSyntax).Select(one => (one.Identifier.ValueText, (SyntaxNode)one.Initializer!.Value)),
        _ => [],
    };

    /// <summary>Two names for what may be one object: <c>var b = a</c>.</summary>
    private static IEnumerable<(string One, string Other)> Aliased(SyntaxNode node) => node switch
    {
        VariableDeclaratorSyntax { Initializer.Value: IdentifierNameSyntax other } variable => [(variable.Identifier.ValueText, other.Identifier.ValueText)],
        AssignmentExpressionSyntax { RawKind: (int)SyntaxKind.SimpleAssignmentExpression, Left: IdentifierNameSyntax one, Right: IdentifierNameSyntax other } => [(one.Identifier.ValueText, other.Identifier.ValueText)],
        _ => [],
    };

    /// <summary>What a member at the top of the script leaves behind.</summary>
    private static IEnumerable<string> Declared(MemberDeclarationSyntax member) => member switch
    {
        FieldDeclarationSyntax field => field.Declaration.Variables.Select(variable => variable.Identifier.ValueText),
        MethodDeclarationSyntax method => [method.Identifier.ValueText],
        PropertyDeclarationSyntax property => [property.Identifier.ValueText],
        BaseTypeDeclarationSyntax type => [type.Identifier.ValueText],
        DelegateDeclarationSyntax function => [function.Identifier.ValueText],
        GlobalStatementSyntax { Statement: ExpressionStatementSyntax statement } => statement.DescendantNodes().OfType<SingleVariableDesignationSyntax>().Select(name => name.Identifier.ValueText),
        GlobalStatementSyntax { Statement: LocalDeclarationStatementSyntax local } => local.Declaration.Variables.Select(variable => variable.Identifier.ValueText),
        GlobalStatementSyntax { Statement: LocalFunctionStatementSyntax function } => [function.Identifier.ValueText],
        _ => [],
    };

    /// <summary>Names that live only inside: parameters, loop variables, locals of blocks.</summary>
    private static IEnumerable<string> DeclaredInside(SyntaxNode node) => node switch
    {
        ParameterSyntax parameter => [parameter.Identifier.ValueText],
        ForEachStatementSyntax loop => [loop.Identifier.ValueText],
        CatchDeclarationSyntax caught => [caught.Identifier.ValueText],
        VariableDeclaratorSyntax variable when variable.Ancestors().Any(above => above is BlockSyntax or ForStatementSyntax or UsingStatementSyntax) => [variable.Identifier.ValueText],
        FromClauseSyntax from => [from.Identifier.ValueText],
        LetClauseSyntax let => [let.Identifier.ValueText],
        _ => [],
    };

    /// <summary>Names that are assigned, passed by reference, or on which something is called for its effect alone.</summary>
    private static IEnumerable<string> Changed(SyntaxNode node) => node switch
    {
        AssignmentExpressionSyntax { Parent: not InitializerExpressionSyntax } assignment => ChangingCalls.Root(assignment.Left),
        PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PreIncrementExpression or (int)SyntaxKind.PreDecrementExpression } step => ChangingCalls.Root(step.Operand),
        PostfixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PostIncrementExpression or (int)SyntaxKind.PostDecrementExpression } step => ChangingCalls.Root(step.Operand),
        ArgumentSyntax { RefKindKeyword.RawKind: not (int)SyntaxKind.None } argument => ChangingCalls.Root(argument.Expression),
        InvocationExpressionSyntax call when ChangingCalls.ChangesItsArgument(call) && call.ArgumentList.Arguments is [{ } first, ..] => ChangingCalls.Root(first.Expression),
        InvocationExpressionSyntax call when ChangingCalls.ChangesItsObject(call) => ChangingCalls.Root(call.Expression),
        _ => [],
    };

    /// <summary>Whether a name stands for itself: not the member after a dot, not the label of an argument or of an initialiser.</summary>
    private static bool IsFree(IdentifierNameSyntax name) => name.Parent switch
    {
        MemberAccessExpressionSyntax access => access.Name != name,
        MemberBindingExpressionSyntax or NameColonSyntax or NameEqualsSyntax or QualifiedNameSyntax => false,
        AssignmentExpressionSyntax { Parent: InitializerExpressionSyntax } assignment => assignment.Left != name,
        _ => true,
    };

    private static bool IsUsedBeforeDeclared(CompilationUnitSyntax root, string name)
    {
        var declaredAt = root.Members.FirstOrDefault(member => Declared(member).Contains(name, StringComparer.Ordinal))?.SpanStart ?? 0;
        return root.DescendantNodes().OfType<IdentifierNameSyntax>().Any(used => used.SpanStart < declaredAt && used.Identifier.ValueText == name && IsFree(used));
    }
}
