using NodaTime;
using RideAudit.Ingest;

namespace RideAudit.Cli.Commands;

/// <summary>Decides, look by look, when a watched folder is to be reviewed: once for a burst of files, and only when they are whole.</summary>
/// <param name="quiet">How long nothing may have changed.</param>
/// <param name="patience">How long an unfinished file is waited for before it is reviewed as it is.</param>
internal sealed class FolderWatch(Duration quiet, Duration patience)
{
    /// <summary>What a watched folder asks for.</summary>
    internal enum Step
    {
        /// <summary>Nothing: look again later.</summary>
        Wait,

        /// <summary>Review now.</summary>
        Review,

        /// <summary>The folder has gone away: say so once.</summary>
        Gone,

        /// <summary>The folder is there again: say so once.</summary>
        Back,
    }

    private Dictionary<string, FolderLook.FileState> _last = [];
    private Dictionary<string, FolderLook.FileState>? _reviewed;
    private Instant _changedAt = Instant.MinValue;
    private bool _gone;

    /// <summary>Takes in a look.</summary>
    /// <param name="look">The files; null while the folder is not there.</param>
    /// <param name="now">When.</param>
    public Step Next(Dictionary<string, FolderLook.FileState>? look, Instant now)
    {
        if (look is null)
        {
            var news = !_gone;
            _gone = true;
            return news ? Step.Gone : Step.Wait;
        }
        var back = _gone;
        if (_gone || !Same(look, _last))
        {
            _gone = false;
            _last = look;
            _changedAt = now;
        }
        if (back)
            return Step.Back;
        if (_reviewed is not null && Same(look, _reviewed))
            return Step.Wait;
        var calm = now - _changedAt;
        if (calm < quiet || (calm < patience && look.Values.Any(f => !f.Whole)))
            return Step.Wait;
        _reviewed = look;
        return Step.Review;
    }

    private static bool Same(Dictionary<string, FolderLook.FileState> a, Dictionary<string, FolderLook.FileState> b) =>
        a.Count == b.Count && a.All(f => b.TryGetValue(f.Key, out var other) && other == f.Value);
}
