namespace RideAudit.Plan.Toml;

/// <summary>A table: its keys in the order of the file.</summary>
internal sealed class TomlTable(TomlPlace place)
{
    private readonly Dictionary<string, TomlNode> _nodes = new(StringComparer.Ordinal);

    /// <summary>Where it begins.</summary>
    public TomlPlace Place { get; } = place;

    /// <summary>Its keys in the order of the file.</summary>
    public List<string> Keys { get; } = [];

    /// <summary>Keys whose lines are not TOML: they are there, and what is wrong with them is said already.</summary>
    public HashSet<string> BrokenKeys { get; } = new(StringComparer.Ordinal);

    public TomlNode? this[string key] => _nodes.GetValueOrDefault(key);

    public void Add(string key, TomlNode node)
    {
        if (_nodes.TryAdd(key, node))
            Keys.Add(key);
        else
            _nodes[key] = node;
    }
}
