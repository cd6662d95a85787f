using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("RideAudit.Report.Tests")]
