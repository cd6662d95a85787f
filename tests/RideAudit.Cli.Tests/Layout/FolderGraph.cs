namespace RideAudit.Cli.Tests.Layout;

/// <summary>The folders of a compiled project and who mentions whom.</summary>
/// <remarks>
/// A folder with all that lies below it is one node. What lies in the project's root is its face, which may know everything, or a value that everything may know:
/// each such type is a node of its own, so that only a true circle through it is one.
/// </remarks>
internal sealed class FolderGraph
{
    private readonly string _root;
    private readonly HashSet<string> _folders;
    private readonly ILookup<string, string> _next;

    private FolderGraph(string root, IReadOnlySet<(CompiledReferences.Type From, CompiledReferences.Type To)> references)
    {
        _root = root;
        References = [.. references.Where(r => IsOwn(r.From))];
        _folders = [.. References.Select(r => r.From).Where(t => t.Namespace != root).Select(NodeOf)];
        _next = References.Where(r => IsOwn(r.To)).Select(r => (From: NodeOf(r.From), To: NodeOf(r.To))).Where(r => r.From != r.To).Distinct().ToLookup(r => r.From, r => r.To);
    }

    /// <summary>All mentions by types of the project, also of types elsewhere.</summary>
    public IReadOnlyList<(CompiledReferences.Type From, CompiledReferences.Type To)> References { get; }

    public IEnumerable<string> Folders => _folders.Order(StringComparer.Ordinal);

    /// <param name="assembly">File name of the assembly beside the tests.</param>
    /// <param name="root">The namespace of the project's root, or of a folder whose sub-folders are looked at.</param>
    public static FolderGraph Of(string assembly, string root) =>
        new(root, CompiledReferences.In(Path.Combine(AppContext.BaseDirectory, assembly)));

    /// <summary>Folders, and root types between them, from each of which a way leads back to it; one line a circle, empty without any.</summary>
    public IReadOnlyList<string> Circles()
    {
        var reach = _next.ToDictionary(n => n.Key, n => ReachedFrom(n.Key));
        var circles = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var (node, reached) in reach)
        {
            string[] circle = [.. reached.Where(other => other != node && reach.TryGetValue(other, out var back) && back.Contains(node)).Append(node).Order(StringComparer.Ordinal)];
            if (circle.Length > 1 && circle.Any(_folders.Contains))
                circles.Add(string.Join(" ", circle));
        }
        return [.. circles];
    }

    /// <summary>The mentions that hold a circle together, for whoever has to mend it.</summary>
    public string Why(string circle)
    {
        var nodes = circle.Split(' ');
        return string.Join('\n', References
            .Where(r => IsOwn(r.To) && nodes.Contains(NodeOf(r.From)) && nodes.Contains(NodeOf(r.To)) && NodeOf(r.From) != NodeOf(r.To))
            .Select(r => $"  {NodeOf(r.From)} → {NodeOf(r.To)}: {r.From.Name} mentions {r.To.Name}")
            .Order(StringComparer.Ordinal));
    }

    /// <summary>The folder of a type below the root, or the type's own name for one in the root.</summary>
    public string NodeOf(CompiledReferences.Type type) =>
        type.Namespace == _root ? type.Name : type.Namespace[(_root.Length + 1)..].Split('.')[0];

    private bool IsOwn(CompiledReferences.Type type) => type.Namespace == _root || type.Namespace.StartsWith(_root + ".", StringComparison.Ordinal);

    private HashSet<string> ReachedFrom(string start)
    {
        var reached = new HashSet<string>();
        var open = new Stack<string>([start]);
        while (open.TryPop(out var node))
            foreach (var next in _next[node])
                if (reached.Add(next))
                    open.Push(next);
        return reached;
    }
}
