namespace RideAudit.Report.Fonts;

/// <summary>The fonts of the pages: Inter from the package, and the machine's for what Inter cannot draw.</summary>
internal sealed class FontSet
{
    private readonly Dictionary<Weight, Face> inter = new()
    {
        [Weight.Regular] = Load("Inter-Regular.ttf"),
        [Weight.SemiBold] = Load("Inter-SemiBold.ttf"),
    };

    private readonly SystemFonts system;

    /// <param name="system">Where to look for characters that Inter lacks.</param>
    public FontSet(SystemFonts system) => this.system = system;

    /// <summary>The fonts of this machine.</summary>
    public static FontSet OfThisMachine { get; } = new(SystemFonts.OfThisMachine);

    /// <summary>Inter in a weight.</summary>
    public Face Inter(Weight weight) => inter[weight];

    /// <summary>A font for one text element; null when neither the package nor the machine has one.</summary>
    public Face? For(Weight weight, string element) => inter[weight].Draws(element) ? inter[weight] : system.For(element);

    private static Face Load(string file) => Face.Open(TabularFigures.Apply(InterPackage.Read(file)))
        ?? throw new InvalidDataException($"{file} of the font package cannot be read as a font.");
}
