using Tomlyn.Syntax;

namespace RideAudit.Plan.Toml;

/// <summary>A place in a TOML file, line and column 1 first.</summary>
internal readonly record struct TomlPlace(int Line, int Column)
{
    public static TomlPlace Of(DiagnosticMessage message) => new(message.Span.Start.Line + 1, message.Span.Start.Column + 1);

    public static TomlPlace Of(SyntaxNode node) => new(node.Span.Start.Line + 1, node.Span.Start.Column + 1);
}
