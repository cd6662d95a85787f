using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("RideAudit.Cli.Tests")]
