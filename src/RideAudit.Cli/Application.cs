using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using RideAudit.Cli.Commands;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Work;

namespace RideAudit.Cli;

/// <summary>Parses the command line, runs the command, and turns every end into an exit code.</summary>
internal static class Application
{
    private static readonly string[] RootOnly = ["--help", "-h", "-?", "/?", "/h", "--version"];

    /// <summary>Runs the program.</summary>
    /// <param name="args">The command line without the program's name.</param>
    /// <param name="shell">The world.</param>
    /// <returns>The exit code.</returns>
    public static int Run(IReadOnlyList<string> args, Shell shell)
    {
        try
        {
            var code = RunCommand(args, shell);
            shell.Out.Flush();
            return code;
        }
        catch (UserError error)
        {
            return Fail(shell, error.Message, error.Code);
        }
        catch (OperationCanceledException) when (shell.Cancel.IsCancellationRequested)
        {
            return Fail(shell, "Interrupted.", ExitCode.Interrupted);
        }
        catch (Exception fault)
        {
            return Fail(shell, FaultMessage(fault), ExitCode.Fault);
        }
    }

    /// <summary>The whole command line, for running and for shell completion.</summary>
    public static RootCommand CreateRoot(Shell shell)
    {
        var root = new RootCommand(
            "Judges a training week from a folder of ride files and writes it up as a PDF. 'rideaudit FOLDER' is the same as 'rideaudit review FOLDER'.");
        var examples = new Dictionary<string, IReadOnlyList<Example>>();
        foreach (var source in CommandList.All)
        {
            var command = source.Create(shell);
            root.Subcommands.Add(command);
            examples[command.Name] = source.Examples;
        }
        examples[root.Name] = CommandList.RootExamples;
        foreach (var option in root.Options.OfType<HelpOption>())
            option.Action = new ExamplesHelp((HelpAction)option.Action!, shell, examples);
        return root;
    }

    private static int RunCommand(IReadOnlyList<string> args, Shell shell)
    {
        var root = CreateRoot(shell);
        if (args.Count == 0)
        {
            root.Parse(["--help"]).Invoke(Invocation(shell));
            return (int)ExitCode.WrongUse;
        }
        var line = WithCommand(args, root, shell);
        var parsed = root.Parse(line, new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0 && parsed.Action is ParseErrorAction or null)
            throw new UserError(ParseErrors.Describe(parsed, args));
        ParseErrors.RefuseOptionAsFolder(parsed, args, shell);
        return parsed.Invoke(Invocation(shell));
    }

    private static InvocationConfiguration Invocation(Shell shell) => new()
    {
        Output = shell.Out,
        Error = shell.Error,
        EnableDefaultExceptionHandler = false,
        ProcessTerminationTimeout = null,
    };

    // A folder dropped on the program is reviewed: a line that starts with anything but a command is a review.
    private static IReadOnlyList<string> WithCommand(IReadOnlyList<string> args, RootCommand root, Shell shell)
    {
        var first = args[0];
        if (Completion.Asks(args))
            return Completion.WithCommand(args, root);
        var isRoots = RootOnly.Contains(first);
        var command = root.Subcommands.FirstOrDefault(c => c.Name == first);
        // A command that still lacks its folder means nothing; a folder of that name does.
        if (command is null && !first.StartsWith('-') && !Path.Exists(shell.FullPath(first)) && Nearest.Of(first, root.Subcommands.Select(c => c.Name)) is { } near)
            throw new UserError($"There is no command and no folder {first}. Did you mean 'rideaudit {near}'?");
        var isFolder = args.Count == 1 && command?.Arguments.Count > 0 && Directory.Exists(shell.FullPath(first));
        return isRoots || (command is not null && !isFolder) ? args : ["review", .. args];
    }

    private static string FaultMessage(Exception fault) => Environment.GetEnvironmentVariable("RIDEAUDIT_TRACE") is null
        ? $"A fault of the program, not of your files: {fault.GetType().Name}: {fault.Message} Set RIDEAUDIT_TRACE=1 and run it again to see where."
        : fault.ToString();

    private static int Fail(Shell shell, string message, ExitCode code)
    {
        shell.Out.Flush();
        shell.WriteError($"rideaudit: {new Marks(shell.Unicode).Show(message)}");
        return (int)code;
    }
}
