using RideAudit.Cli.Terminal;

using var interrupt = new Interrupt();
using var shell = SystemShell.Open(interrupt.Token);
return RideAudit.Cli.Application.Run(args, shell);
