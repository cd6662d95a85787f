using System.Collections.Immutable;
using RideAudit.Plan.Toml;

namespace RideAudit.Plan;

/// <summary>Makes a rider file's excepted days those that are asked for.</summary>
internal static class RiderFileEditorExceptions
{
    private const string Name = "exception";

    public static void Set(TomlEditor editor, ImmutableArray<PlanException> asked)
    {
        // One by one: all together they would come in the order of their dates, not of the file. One that cannot be read is nobody's.
        var written = editor.Entries(Name)
            .ConvertAll(e => RiderFileReader.ReadLeniently(editor.EntryText(e)).Exceptions.FirstOrDefault());
        var missing = asked.ToList();
        var over = new List<int>();
        for (var i = 0; i < written.Count; i++)
        {
            if (written[i] is { } entry && !missing.Remove(entry))
                over.Add(i);
        }
        // One that begins on the same day is the same one, changed.
        foreach (var index in over.ToArray())
        {
            if (missing.Find(m => m.From == written[index]!.From) is not { } changed)
                continue;
            Change(editor, index, written[index]!, changed);
            missing.Remove(changed);
            over.Remove(index);
        }
        foreach (var index in Enumerable.Reverse(over))
            editor.RemoveEntry(Name, index);
        foreach (var added in missing.OrderBy(m => m.From))
            editor.AddEntry(Name, editor.Entries(Name).Count, Lines(added));
    }

    private static void Change(TomlEditor editor, int index, PlanException there, PlanException asked)
    {
        if (asked.To != there.To)
            editor.SetIn(Name, index, "to", TomlValues.Date(asked.To));
        if (asked.Kind != there.Kind)
            editor.SetIn(Name, index, "kind", TomlValues.Word(asked.Kind));
    }

    private static IEnumerable<string> Lines(PlanException added) =>
    [
        $"from = {TomlValues.Date(added.From)}", $"to = {TomlValues.Date(added.To)}", $"kind = {TomlValues.Word(added.Kind)}",
    ];
}
