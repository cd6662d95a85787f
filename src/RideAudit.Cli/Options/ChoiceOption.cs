using System.CommandLine;

namespace RideAudit.Cli.Options;

/// <summary>An option that takes one of a few words.</summary>
internal static class ChoiceOption
{
    /// <summary>A new option; not given, it is its type's default.</summary>
    /// <typeparam name="T">What the words stand for.</typeparam>
    /// <param name="name">Its name.</param>
    /// <param name="description">What it does.</param>
    /// <param name="choices">The words and what they stand for.</param>
    public static Option<T> Create<T>(string name, string description, params (string Word, T Value)[] choices)
    {
        var words = choices.Select(c => c.Word).ToArray();
        var option = new Option<T>(name)
        {
            Description = description,
            HelpName = string.Join('|', words),
            Arity = ArgumentArity.ExactlyOne,
            CustomParser = result =>
            {
                var word = result.Tokens[^1].Value;
                foreach (var choice in choices)
                    if (string.Equals(choice.Word, word, StringComparison.OrdinalIgnoreCase))
                        return choice.Value;
                result.AddError($"{name} takes {Listed(words)}; found '{word}'.");
                return default!;
            },
        };
        option.CompletionSources.Add(words);
        return option;
    }

    private static string Listed(string[] words) =>
        words.Length == 1 ? $"'{words[0]}'" : string.Join(", ", words[..^1].Select(w => $"'{w}'")) + $" or '{words[^1]}'";
}
