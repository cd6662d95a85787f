namespace RideAudit.Report.Fridge;

/// <summary>How to read the open blocks.</summary>
internal static class OpenKey
{
    /// <summary>What is added where some of the week is ridden.</summary>
    public const string Ridden = " Filled: ridden.";

    /// <summary>In a line.</summary>
    public const string Text = "Width: time. Height: intensity ratio squared. Area: training stress to expect. Strong outline: hard. Dashes: one hour at threshold power is 100.";
}
