using Tomlyn.Syntax;

namespace RideAudit.Plan.Toml;

/// <summary>What a key stands for: a value, a table, or an array of tables.</summary>
/// <param name="KeyPlace">Where the key stands.</param>
/// <param name="Value">The value; null for tables.</param>
/// <param name="Tables">One table, or several for an array of tables; empty for a value.</param>
/// <param name="IsArray">Written with double brackets.</param>
/// <param name="IsImplied">A table only named as part of a longer key: it may still be written out once.</param>
internal sealed record TomlNode(TomlPlace KeyPlace, ValueSyntax? Value, List<TomlTable> Tables, bool IsArray, bool IsImplied = false)
{
    /// <summary>What stands there, as a mistake names it.</summary>
    public string Found => Value is { } value ? TomlWords.Found(value) : IsArray ? "a list of tables" : "a table";
}
