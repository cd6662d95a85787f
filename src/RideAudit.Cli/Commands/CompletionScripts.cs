namespace RideAudit.Cli.Commands;

/// <summary>Scripts that ask the program itself, by its suggest directive, what may come next.</summary>
internal static class CompletionScripts
{
    private const string Bash = """
        _rideaudit() {
            local word="${COMP_WORDS[COMP_CWORD]}" found
            found="$("${COMP_WORDS[0]}" "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)"
            COMPREPLY=()
            while IFS= read -r line; do
                [[ -n "$line" ]] && COMPREPLY+=("$line")
            done < <(compgen -W "$found" -- "$word")
        }
        complete -o default -F _rideaudit rideaudit

        """;

    private const string Zsh = """
        _rideaudit() {
            local -a found
            found=("${(@f)$("${words[1]}" "[suggest:${CURSOR}]" "$BUFFER" 2>/dev/null)}")
            [[ "${words[CURRENT]}" == -* || $CURRENT -eq 2 ]] && compadd -- $found
            _files
        }
        compdef _rideaudit rideaudit

        """;

    private const string Fish = """
        function __rideaudit_complete
            set -l line (commandline -cp)
            rideaudit "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null
        end
        complete -c rideaudit -a "(__rideaudit_complete)"

        """;

    private const string Pwsh = """
        Register-ArgumentCompleter -Native -CommandName rideaudit -ScriptBlock {
            param($word, $line, $cursor)
            rideaudit "[suggest:$cursor]" "$line" 2>$null |
                Where-Object { $_ -like "$word*" } |
                ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }
        }

        """;

    /// <summary>The shells there is a script for.</summary>
    public static IReadOnlyList<string> Shells { get; } = ["bash", "zsh", "fish", "pwsh"];

    /// <summary>The script for a shell.</summary>
    /// <param name="shell">One of <see cref="Shells"/>.</param>
    public static string For(string shell) => (shell switch
    {
        "bash" => Bash,
        "zsh" => Zsh,
        "fish" => Fish,
        _ => Pwsh,
    }).ReplaceLineEndings("\n");
}
