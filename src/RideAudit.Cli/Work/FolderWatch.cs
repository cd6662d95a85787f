using NodaTime;

namespace RideAudit.Cli.Work;

/// <summary>Decides, look by look, when a watched folder is to be reviewed: once for a burst of files, and only when they are whole.</summary>
/// <param name="quiet">How long nothing may have changed.</param>
/// <param name="patience">How long an unfinished file is waited for before it is reviewed as it is.</param>
internal sealed class FolderWatch(Duration quiet, Duration patience)
{
    private Dictionary<string, FileState> _last = [];
    private Dictionary<string, FileState>? _reviewed;
    private Instant _changedAt = Instant.MinValue;
    private bool _gone;

    /// <summary>Takes in a look.</summary>
    /// <param name="look">The files; null while the folder is not there.</param>
    /// <param name="now">When.</param>
    public WatchStep Next(Dictionary<string, FileState>? look, Instant now)
    {
        if (look is null)
        {
            var news = !_gone;
            _gone = true;
            return news ? WatchStep.Gone : WatchStep.Wait;
        }
        var back = _gone;
        if (_gone || !Same(look, _last))
        {
            _gone = false;
            _last = look;
            _changedAt = now;
        }
        if (back)
            return WatchStep.Back;
        if (_reviewed is not null && Same(look, _reviewed))
            return WatchStep.Wait;
        var calm = now - _changedAt;
        if (calm < quiet || (calm < patience && look.Values.Any(f => !f.Whole)))
            return WatchStep.Wait;
        _reviewed = look;
        return WatchStep.Review;
    }

    private static bool Same(Dictionary<string, FileState> a, Dictionary<string, FileState> b) =>
        a.Count == b.Count && a.All(f => b.TryGetValue(f.Key, out var other) && other == f.Value);
}
