namespace RideAudit.Tests.Support;

/// <summary>Text with plain spaces, for comparing what is said apart from how it may break.</summary>
internal static class PlainSpaces
{
    public static string Plain(this string text) => text.Replace('\u00A0', ' ');
}
