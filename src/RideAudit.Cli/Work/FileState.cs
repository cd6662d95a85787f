using NodaTime;

namespace RideAudit.Cli.Work;

/// <summary>What a look at a file tells without reading it through.</summary>
/// <param name="Length">Bytes.</param>
/// <param name="Changed">When it was last written.</param>
/// <param name="Whole">False while its own header promises more bytes than there are.</param>
internal readonly record struct FileState(long Length, Instant Changed, bool Whole);
