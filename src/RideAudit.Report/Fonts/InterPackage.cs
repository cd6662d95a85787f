using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace RideAudit.Report.Fonts;

/// <summary>Reads the TrueType files out of the font package's assembly, which is carried as data and never loaded.</summary>
/// <remarks>
/// The assembly's resource <c>!AvaloniaResources</c> holds the index's length, the index (version 2, a count, then path, offset and
/// size of each entry) and the files; offsets count from the index's end.
/// </remarks>
internal static class InterPackage
{
    private const string ResourceName = "!AvaloniaResources";
    private const int KnownIndexVersion = 2;

    /// <summary>The file whose path ends in <paramref name="fileName"/>.</summary>
    /// <exception cref="InvalidDataException">The package is not laid out as expected.</exception>
    public static byte[] Read(string fileName)
    {
        using var assembly = typeof(InterPackage).Assembly.GetManifestResourceStream("RideAudit.Report.Inter")
            ?? throw new InvalidDataException("The report's font resource is missing from the program.");
        using var reader = new PEReader(assembly);
        return Read(OpenResource(reader), fileName);
    }

    private static BlobReader OpenResource(PEReader reader)
    {
        var metadata = reader.GetMetadataReader();
        var directory = reader.PEHeaders.CorHeader!.ResourcesDirectory.RelativeVirtualAddress;
        foreach (var handle in metadata.ManifestResources)
        {
            var resource = metadata.GetManifestResource(handle);
            if (metadata.GetString(resource.Name) != ResourceName)
                continue;
            var blob = reader.GetSectionData(directory).GetReader();
            blob.Offset = checked((int)resource.Offset);
            blob.ReadInt32();
            return blob;
        }

        throw new InvalidDataException($"The font package has no resource {ResourceName}.");
    }

    private static byte[] Read(BlobReader blob, string fileName)
    {
        var indexLength = blob.ReadInt32();
        var files = blob.Offset + indexLength;
        var version = blob.ReadInt32();
        if (version != KnownIndexVersion)
            throw new InvalidDataException($"The font package's index is of version {version}; version {KnownIndexVersion} is known.");
        var count = blob.ReadInt32();
        for (var entry = 0; entry < count; entry++)
        {
            var path = blob.ReadSerializedString() ?? "";
            var offset = blob.ReadInt32();
            var size = blob.ReadInt32();
            if (!path.EndsWith(fileName, StringComparison.Ordinal))
                continue;
            blob.Offset = files + offset;
            return blob.ReadBytes(size);
        }

        throw new InvalidDataException($"The font package has no file {fileName}.");
    }
}
