using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("RideAudit.Tests")]
