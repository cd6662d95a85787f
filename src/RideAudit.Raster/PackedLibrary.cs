using System.Reflection;
using System.Runtime.InteropServices;
using SkiaSharp;

namespace RideAudit.Raster;

/// <summary>The native drawing library where it lies inside the program: unpacked when the first picture is drawn, and gone from the disk before it is.</summary>
internal static class PackedLibrary
{
    private const string Name = "libSkiaSharp";
    private static readonly Lazy<bool> Registered = new(Register);
    private static readonly Lazy<nint> Handle = new(Load);

    /// <summary>Has the library found before it is first asked for; any number of times.</summary>
    public static void Prepare() => _ = Registered.Value;

    private static bool Register()
    {
        NativeLibrary.SetDllImportResolver(typeof(SKObject).Assembly, (name, _, _) => name == Name ? Handle.Value : 0);
        return true;
    }

    /// <returns>0 where the library is not inside the program: it is then looked for beside it.</returns>
    private static nint Load()
    {
        using var packed = Assembly.GetEntryAssembly()?.GetManifestResourceStream(Name);
        if (packed is null)
            return 0;
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
