using System.CommandLine;
using System.CommandLine.Help;
using RideAudit.Cli.BrowserPage;
using RideAudit.Cli.Commands;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli;

/// <summary>Parses the command line, runs the command, and turns every end into an exit code.</summary>
internal static class Application
{
    private static readonly string[] RootOnly = ["--help", "-h", "-?", "/?", "/h", "--version"];

    // In the order the help lists them.
    private static readonly Func<Shell, ProgramCommand>[] Commands =
    [
        ReviewCommand.Create, RidesCommand.Create, WeeksCommand.Create, RulesCommand.Create, NewRiderCommand.Create,
        WatchCommand.Create, RosterCommand.Create, NextCommand.Create, CheckCommand.Create, PageCommand.Create, CompletionCommand.Create,
    ];

    /// <summary>Runs the program, and keeps a window open that would close with it.</summary>
    /// <param name="args">The command line without the program's name.</param>
    /// <param name="shell">The world.</param>
    /// <returns>The exit code.</returns>
    public static int Run(IReadOnlyList<string> args, Shell shell)
    {
        var code = RunToTheEnd(args, shell);
        if (shell.OwnsWindow && !shell.Cancel.IsCancellationRequested)
        {
            shell.Tell("Press a key to close this window.");
            shell.WaitForKey();
        }
        return code;
    }

    /// <summary>The whole command line, for running and for shell completion.</summary>
    public static RootCommand CreateRoot(Shell shell)
    {
        var root = new RootCommand(
            "Judges a training week from a folder of ride files and writes it up as a PDF. 'rideaudit FOLDER' is the same as 'rideaudit review FOLDER'.");
        foreach (var create in Commands)
            root.Subcommands.Add(create(shell));
        foreach (var option in root.Options.OfType<HelpOption>())
            option.Action = new ExamplesHelp((HelpAction)option.Action!, shell);
        return root;
    }

    private static int RunToTheEnd(IReadOnlyList<string> args, Shell shell)
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

    private static int RunCommand(IReadOnlyList<string> args, Shell shell)
    {
        var root = CreateRoot(shell);
        // A double click types nothing, and its reader has no terminal to type into.
        if (args.Count == 0 && shell.OwnsWindow && CarriedPage.IsThere)
            return (int)PageCommand.Open(shell, CarriedPage.Open());
        if (args.Count == 0)
        {
            root.Parse(["--help"]).Invoke(Invocation(shell));
            return (int)ExitCode.WrongUse;
        }
        var line = WithCommand(args, root, shell);
        var parsed = root.Parse(line, new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
        Mistakes.Refuse(root, parsed, args, shell);
        return parsed.Invoke(Invocation(shell));
    }

    private static InvocationConfiguration Invocation(Shell shell) => new()
    {
        Output = shell.Out,
        Error = shell.Error,
        EnableDefaultExceptionHandler = false,
        ProcessTerminationTimeout = null,
    };

    // What is dropped on the program is reviewed: a line that starts with anything but a command is a review.
    private static IReadOnlyList<string> WithCommand(IReadOnlyList<string> args, RootCommand root, Shell shell)
    {
        var first = args[0];
        if (Suggest.Asks(args))
            return Suggest.WithCommand(args, root);
        var isRoots = RootOnly.Contains(first);
        var command = root.Subcommands.FirstOrDefault(c => c.Name == first);
        // A command that still lacks its folder means nothing; a folder of that name does.
        if (command is null && !first.StartsWith('-') && !Path.Exists(shell.FullPath(first)))
            RefuseMistyped(first, root);
        var isFolder = args.Count == 1 && command?.Arguments.Count > 0 && Directory.Exists(shell.FullPath(first));
        return isRoots || (command is not null && !isFolder) ? args : ["review", .. args];
    }

    private static void RefuseMistyped(string first, RootCommand root)
    {
        var nearest = Mistakes.Nearest(root, [first]);
        if (root.Subcommands.Any(c => nearest.Split('\n').Contains(c.Name)))
            throw new UserError($"There is no command and no folder {first}.\n{nearest}");
    }

    private static string FaultMessage(Exception fault) => Environment.GetEnvironmentVariable("RIDEAUDIT_TRACE") is null
        ? $"A fault of the program, not of your files: {fault.GetType().Name}: {fault.Message} Set RIDEAUDIT_TRACE=1 and run it again to see where."
        : fault.ToString();

    private static int Fail(Shell shell, string message, ExitCode code)
    {
        try
        {
            shell.TellError(message);
        }
        catch (UserError)
        {
            // Standard output has failed as well: it is not written to again, and standard error may still be there.
            shell.TellError(message);
        }
        return (int)code;
    }
}
