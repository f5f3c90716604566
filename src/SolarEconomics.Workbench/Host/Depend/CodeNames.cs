using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace SolarEconomics.Workbench;

/// <summary>The names that a step defines for the steps below, and those it uses from above, as far as its text tells.</summary>
/// <param name="Defines">Variables, functions and types declared at the top, and what is assigned or may be changed by a call.</param>
/// <param name="Uses">Names that the step does not declare itself before using them.</param>
/// <param name="IsForAll">Whether it changes what every later step means: usings and directives.</param>
internal sealed record CodeNames(IReadOnlySet<string> Defines, IReadOnlySet<string> Uses, bool IsForAll)
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    public static CodeNames Of(string code)
    {
        var root = CSharpSyntaxTree.ParseText(code, Script).GetCompilationUnitRoot();
        var declared = root.Members.SelectMany(Declared).ToHashSet(StringComparer.Ordinal);
        var inner = root.DescendantNodes().SelectMany(DeclaredInside).ToHashSet(StringComparer.Ordinal);
        var names = root.DescendantNodes().OfType<IdentifierNameSyntax>().Where(IsFree).Select(name => name.Identifier.ValueText).ToHashSet(StringComparer.Ordinal);
        var changed = root.DescendantNodes().SelectMany(Changed).Where(name => !inner.Contains(name) && !declared.Contains(name)).ToHashSet(StringComparer.Ordinal);
        var uses = names.Where(name => !inner.Contains(name) && (!declared.Contains(name) || IsUsedBeforeDeclared(root, name))).ToHashSet(StringComparer.Ordinal);
        declared.UnionWith(changed);
        var isForAll = root.Usings.Count > 0 || root.ContainsDirectives;
        return new CodeNames(declared, uses, isForAll);
    }

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
        AssignmentExpressionSyntax { Parent: not InitializerExpressionSyntax } assignment => Root(assignment.Left),
        PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PreIncrementExpression or (int)SyntaxKind.PreDecrementExpression } step => Root(step.Operand),
        PostfixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PostIncrementExpression or (int)SyntaxKind.PostDecrementExpression } step => Root(step.Operand),
        ArgumentSyntax { RefKindKeyword.RawKind: not (int)SyntaxKind.None } argument => Root(argument.Expression),
        ExpressionStatementSyntax { Expression: InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax access }, SemicolonToken.IsMissing: false } => Root(access.Expression),
        _ => [],
    };

    private static IEnumerable<string> Root(ExpressionSyntax expression) => expression switch
    {
        IdentifierNameSyntax name => [name.Identifier.ValueText],
        MemberAccessExpressionSyntax access => Root(access.Expression),
        ElementAccessExpressionSyntax access => Root(access.Expression),
        InvocationExpressionSyntax call => Root(call.Expression),
        TupleExpressionSyntax tuple => tuple.Arguments.SelectMany(argument => Root(argument.Expression)),
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
