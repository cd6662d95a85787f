using System.Collections.Concurrent;
using System.Collections.Immutable;
using NodaTime;
using RideAudit.Ingest.Archives;
using RideAudit.Ingest.Csv;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Ingest;

/// <summary>
/// Takes files as named streams, from a folder, an archive or anywhere else, and says what they hold together.
/// In whatever order and from however many threads they are added, the result is the same; one bad file never stops the rest.
/// </summary>
/// <remarks>
/// Files are read as they are added and then let go. Where no rider is given, what a file's reading takes from the rider
/// (time zone, CSV columns) is not known until the rider file is among them: such files are kept and read again at the end.
/// Adding the rider file first, or giving the rider, keeps nothing.
/// </remarks>
public sealed class Intake
{
    private readonly Rider? _given;
    private readonly DateTimeZone _machineZone;
    private readonly ReadLimits _limits;
    private readonly CancellationToken _cancel;
    private readonly ConcurrentBag<FileContent> _contents = [];
    private readonly ConcurrentBag<FileNotice> _notices = [];
    private readonly ConcurrentDictionary<string, bool> _names = new(StringComparer.Ordinal);
    private volatile Rider? _found;
    private int _seen;

    /// <summary>Opens an intake.</summary>
    /// <param name="rider">The rider, for the time zone and the CSV column map; null to take the one of the rider file among the files, or the defaults.</param>
    /// <param name="machineZone">Used where the rider has no time zone.</param>
    /// <param name="cancel">Stops between files and between an archive's entries.</param>
    public Intake(Rider? rider, DateTimeZone machineZone, CancellationToken cancel = default)
        : this(rider, machineZone, ReadLimits.Default, cancel)
    {
    }

    internal Intake(Rider? rider, DateTimeZone machineZone, ReadLimits limits, CancellationToken cancel)
    {
        _given = rider;
        _machineZone = machineZone;
        _limits = limits;
        _cancel = cancel;
    }

    /// <summary>Lets go of what no figure is computed from (cadence, speed) as soon as a file is read.</summary>
    public bool KeepsOnlyWhatIsJudged { get; init; }

    /// <summary>Reads one file. What is wrong with it becomes a notice, never an exception.</summary>
    /// <param name="name">Its path with <c>/</c> below whatever was dropped or opened; names that begin with a dot, and what lies in folders so named, are passed over.</param>
    /// <param name="content">The content from its beginning; it stays open. One that cannot seek is read into memory first.</param>
    /// <exception cref="ArgumentException">The name is empty, or a file of this name was added before.</exception>
    /// <exception cref="OperationCanceledException">The token given at the start was signalled.</exception>
    public void Add(string name, Stream content)
    {
        var shown = ShownName.OfEntry(name);
        ArgumentException.ThrowIfNullOrEmpty(shown, nameof(name));
        if (ShownName.IsClutter(shown))
            return;
        if (!_names.TryAdd(shown, true))
            throw new ArgumentException($"A file named {shown} was added before.", nameof(name));
        Take(shown, () => content, leaveOpen: true);
    }

    /// <summary>What all files hold.</summary>
    /// <returns>The same in whatever order the files were added.</returns>
    public FolderContent Finish()
    {
        using var phase = Phase.Begin("copies and duplicates");
        var texts = _contents.SelectMany(c => c.Texts).OrderBy(t => t.File, StringComparer.Ordinal).ToArray();
        var riderFile = texts.Where(t => RiderTexts.IsRiderFile(t.File)).OrderBy(t => t.File.Count(c => c == '/')).FirstOrDefault();
        var rider = _given ?? RiderIn(riderFile) ?? new Rider();
        var context = Context(rider);
        var contents = _contents.Select(c => c.ReadFor(context)).OrderBy(c => c.File, StringComparer.Ordinal).ThenBy(c => c.Hash);
        var notices = _notices.OrderBy(n => n.Sentence, StringComparer.Ordinal).ToList();
        var copies = new List<(string LeftOut, string Kept)>();
        var distinct = WithoutCopies(contents, notices, copies);
        var (kept, leftOut) = DuplicateFinder.Split(distinct.SelectMany(c => c.Recordings));
        copies.AddRange(leftOut.Select(d => (d.LeftOut.File, d.Kept.File)));
        ImmutableArray<LoggedRide> log = [.. LogNames.Resolve(distinct.SelectMany(c => c.LoggedRides), kept, copies, notices)];
        notices.AddRange(distinct.SelectMany(c => c.Notices));
        DuplicateNotices.Add(notices, leftOut);
        PlanSheet[] sheets = [.. distinct.Select(c => c.Plan).OfType<PlanSheet>()];
        var plan = PlanTable.Merge(sheets);
        notices.AddRange(PlanTables.Notices(plan, sheets));
        return new FolderContent
        {
            FilesSeen = _seen,
            Recordings = kept,
            LoggedRides = log,
            Plan = plan,
            PlanSheets = [.. sheets],
            Notices = [.. notices.OrderBy(n => n.File, StringComparer.Ordinal)],
            RiderFile = riderFile,
            Notes = [.. texts.Where(t => RiderTexts.IsNote(t.File))],
            TimeZone = context.Zone.Id,
            TimeZoneIsTheMachines = context.ZoneIsTheMachines,
        };
    }

    /// <summary>Reads one file that has yet to be opened.</summary>
    /// <param name="name">Fit to be shown; two files may share it.</param>
    /// <param name="open">Opens it; what it throws becomes a notice.</param>
    /// <param name="leaveOpen">False to close the stream once read.</param>
    internal void Take(string name, Func<Stream> open, bool leaveOpen = false)
    {
        _cancel.ThrowIfCancellationRequested();
        Interlocked.Increment(ref _seen);
        var rider = _given ?? _found;
        foreach (var content in Read(name, open, leaveOpen, new FileOpener(Context(rider ?? new Rider()), _limits, _cancel, mayReadAgain: rider is null)))
        {
            _contents.Add(rider is null ? content : content with { Again = null });
            foreach (var text in content.Texts)
                if (text.File == RiderTexts.RiderFile && _given is null)
                    _found = RiderIn(text) ?? new Rider();
        }
    }

    /// <summary>Says something of a file that there is nothing to read of.</summary>
    internal void Tell(FileNotice notice) => _notices.Add(notice);

    private IReadOnlyList<FileContent> Read(string name, Func<Stream> open, bool leaveOpen, FileOpener opener)
    {
        Stream? stream = null;
        try
        {
            stream = open();
            return Read(name, stream, opener);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return [Unread(name, "gone", "This file went away while the folder was read, or its name cannot be understood: rename it and try again.")];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [Unread(name, "not readable", "This file could not be opened: check its permissions and whether another program holds it.")];
        }
        catch (OutOfMemoryException)
        {
            return [Unread(name, "too large", "There was not enough memory to read this file: check what it is.")];
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            // One bad file never stops the rest, not even by a fault of ours: but it is said, so that it can be mended.
            return [FileContent.Unusable(name, "not readable", $"Reading this file failed in a way that should not happen ({e.GetType().Name}): please report it; the other files were read.")];
        }
        finally
        {
            if (!leaveOpen)
                stream?.Dispose();
        }
    }

    private IReadOnlyList<FileContent> Read(string name, Stream stream, FileOpener opener)
    {
        var layers = ArchiveLayers.None(_limits);
        using var budget = layers.Budget;
        if (stream.CanSeek)
            return opener.Open(name, stream, stream.Length, layers);
        using var unpacked = Unpacking.Read(stream, 0, _limits, layers.Budget);
        return unpacked.Result switch
        {
            Unpacked.Outcome.TooLarge => [NoRide.TooLarge(name, _limits)],
            Unpacked.Outcome.Damaged => throw new IOException(),
            _ => opener.Open(name, unpacked.ToStream(), unpacked.Length, layers),
        };
    }

    private IngestContext Context(Rider rider) => new(rider, _machineZone) { KeepsAll = !KeepsOnlyWhatIsJudged };

    private static Rider? RiderIn(NamedText? riderFile) =>
        riderFile is { } file ? RiderFileReader.Read(file.Text, file.File).Rider : null;

    private static FileContent Unread(string name, string problem, string sentence) =>
        RideEndings.Promise(name) ? FileContent.Unusable(name, problem, sentence) : FileContent.Nothing(name);

    private static List<FileContent> WithoutCopies(IEnumerable<FileContent> contents, List<FileNotice> notices, List<(string LeftOut, string Kept)> copies)
    {
        // Rows that count seconds take their date from the file's name: equal bytes on two days are two rides.
        var first = new Dictionary<(UInt128 Hash, Instant? Start), string>();
        var distinct = new List<FileContent>();
        foreach (var content in contents)
        {
            var key = (content.Hash, content.Recordings.IsEmpty ? (Instant?)null : content.Recordings[0].Start);
            if (!content.IsOfUse || first.TryAdd(key, content.File))
            {
                distinct.Add(content);
                continue;
            }
            notices.Add(new FileNotice(content.File, "duplicate", null, $"The same file as {first[key]}, which is kept.", false));
            copies.Add((content.File, first[key]));
        }
        return distinct;
    }
}
