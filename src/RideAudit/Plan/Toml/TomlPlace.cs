using Tomlyn.Syntax;

namespace RideAudit.Plan.Toml;

/// <summary>A place in a TOML file, line and column 1 first.</summary>
internal readonly record struct TomlPlace(int Line, int Column)
{
    public static TomlPlace Of(SyntaxNode node) => new(node.Span.Start.Line + 1, node.Span.Start.Column + 1);
}
