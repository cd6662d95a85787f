using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("RideAudit.Report.Tests")]
[assembly: InternalsVisibleTo("RideAudit.Raster")]
[assembly: InternalsVisibleTo("RideAudit.Fuzz")]
