using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("RideAudit.Tests")]
[assembly: InternalsVisibleTo("RideAudit.Report")]
[assembly: InternalsVisibleTo("RideAudit.Testing")]
[assembly: InternalsVisibleTo("RideAudit.Benchmarks")]
