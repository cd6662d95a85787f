using System.Reflection;
using System.Runtime.InteropServices;
using SkiaSharp;

namespace RideAudit.Raster;

/// <summary>The native drawing library where it lies inside the program: unpacked when the first picture is drawn, and gone from the disk before it is.</summary>
internal static class PackedLibrary
{
    private const string Name = "libSkiaSharp";
    private static readonly Lazy<nint> Handle = new(Register);

    /// <summary>Has the library found before it is first asked for; any number of times.</summary>
    /// <exception cref="DllNotFoundException">It cannot be unpacked and loaded.</exception>
    public static void Prepare() => _ = Handle.Value;

    /// <returns>0 where the library is not inside the program: it is then looked for beside it.</returns>
    private static nint Register()
    {
        using var packed = Assembly.GetEntryAssembly()?.GetManifestResourceStream(Name);
        if (packed is null)
            return 0;
        var handle = Load(packed);
        NativeLibrary.SetDllImportResolver(typeof(SKObject).Assembly, (name, _, _) => name == Name ? handle : 0);
        return handle;
    }

    private static nint Load(Stream packed)
    {
        try
        {
            return Unpack(packed);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or DllNotFoundException)
        {
            throw new DllNotFoundException($"The drawing library, which only pictures need, cannot be unpacked into {Path.GetTempPath()} and loaded from there: set TMPDIR to a folder where that is allowed.", e);
        }
    }

    private static nint Unpack(Stream packed)
    {
        var folder = Directory.CreateTempSubdirectory("rideaudit-");
        try
        {
            var path = Path.Combine(folder.FullName, Name + ".so");
            using (var file = File.Create(path))
                packed.CopyTo(file);
            return NativeLibrary.Load(path);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
