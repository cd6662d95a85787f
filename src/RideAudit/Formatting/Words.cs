using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Text;

namespace RideAudit.Formatting;

/// <summary>The words for what the core names in enumerations, the same in sentences and in JSON.</summary>
/// <remarks>A member's name in lower case, its parts apart (<c>VeryHigh</c> is <c>very high</c>), unless it carries a <see cref="WordAttribute"/>.</remarks>
public static class Words
{
    /// <summary>A member's word; empty when it has none.</summary>
    /// <typeparam name="T">The enumeration.</typeparam>
    /// <param name="value">A named member.</param>
    public static string Of<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields)] T>(T value)
        where T : struct, Enum => OrNull<T>(value) ?? "";

    /// <summary>A member's word; null when it has none, or is null.</summary>
    /// <typeparam name="T">The enumeration.</typeparam>
    /// <param name="value">A named member.</param>
    public static string? OrNull<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields)] T>(T? value)
        where T : struct, Enum => value is { } known ? Table<T>.Words[known] : null;

    /// <summary>The member of a word.</summary>
    /// <typeparam name="T">The enumeration.</typeparam>
    /// <param name="word">Null for the member that has none.</param>
    /// <returns>Null when no member has it.</returns>
    public static T? Find<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields)] T>(string? word)
        where T : struct, Enum
    {
        foreach (var (value, known) in Table<T>.Words)
        {
            if (known == word)
                return value;
        }
        return null;
    }

    private static string Spelled(string name)
    {
        var text = new StringBuilder(name.Length + 2);
        foreach (var letter in name)
        {
            if (char.IsUpper(letter) && text.Length > 0)
                text.Append(' ');
            text.Append(char.ToLowerInvariant(letter));
        }
        return text.ToString();
    }

    private static class Table<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields)] T>
        where T : struct, Enum
    {
        public static readonly FrozenDictionary<T, string?> Words = Enum.GetValues<T>().ToFrozenDictionary(v => v, WordOf);

        private static string? WordOf(T value)
        {
            var name = value.ToString();
            return typeof(T).GetField(name)?.GetCustomAttribute<WordAttribute>() is { } given ? given.Word : Spelled(name);
        }
    }
}
