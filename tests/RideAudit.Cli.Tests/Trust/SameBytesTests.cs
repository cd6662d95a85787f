using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Trust;

/// <summary>The same rides and the same rider give the same bytes, whatever the machine is set to.</summary>
public sealed class SameBytesTests
{
    private static readonly (string Zone, string Locale, string Threads)[] Machines =
    [
        ("UTC", "C.UTF-8", "2"),
        ("Asia/Kolkata", "tr_TR.UTF-8", "1"),
        ("America/St_Johns", "de_DE.UTF-8", "2"),
        ("Pacific/Apia", "ar_SA.UTF-8", "1"),
        ("Pacific/Kiritimati", "fa_IR.UTF-8", "2"),
    ];

    [Fact]
    public void Zone_locale_and_threads_of_the_machine_change_no_byte_of_any_output()
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder);
        var made = Machines.Select((machine, i) => Digest(Run(rides, folder.At($"out-{i}"), machine))).ToArray();
        Assert.Equal(8, made[0].Count);
        Assert.All(made, m => Assert.Equal(made[0], m));
    }

    [Fact]
    public void The_order_in_which_files_came_to_the_disk_changes_no_byte()
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder);
        var backwards = Directory.CreateDirectory(folder.At("other/rides")).FullName;
        foreach (var file in Directory.EnumerateFiles(rides).OrderDescending(StringComparer.Ordinal))
            File.Copy(file, Path.Combine(backwards, Path.GetFileName(file)));
        Assert.Equal(Digest(Outputs.Of(rides, folder.At("one"), Demo.AsOf)), Digest(Outputs.Of(backwards, folder.At("two"), Demo.AsOf)));
    }

    // The program has no culture data but the invariant ones; a culture set in its process, with every sign unlike them, stands for all.
    [Fact]
    public void A_culture_set_in_the_process_changes_no_byte()
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder);
        var plain = Digest(Outputs.Of(rides, folder.At("plain"), Demo.AsOf));
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = Foreign();
            Assert.Equal("\u22121;5", (-1.5).ToString(CultureInfo.CurrentCulture));
            Assert.Equal(plain, Digest(Outputs.Of(rides, folder.At("foreign"), Demo.AsOf)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.DefaultThreadCurrentCulture = null;
        }
    }

    private static Dictionary<string, byte[]> Run(string rides, string into, (string Zone, string Locale, string Threads) machine)
    {
        Directory.CreateDirectory(into);
        var made = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        (string, string)[] environment = [("TZ", machine.Zone), ("LANG", machine.Locale), ("LC_ALL", machine.Locale), ("DOTNET_PROCESSOR_COUNT", machine.Threads)];
        // Each is a process of its own, so only those that between them write every format.
        foreach (var (name, words) in Outputs.Commands(rides, Demo.AsOf).Where(c => c.Name is "review" or "rides-csv" or "weeks-csv" or "next"))
        {
            var ended = RealProgram.Run(into, environment, words);
            Assert.Equal((0, ""), (ended.Code, ended.Error));
            made[name] = Encoding.UTF8.GetBytes(ended.Out);
        }
        foreach (var file in Directory.EnumerateFiles(into))
            made[Path.GetFileName(file)] = File.ReadAllBytes(file);
        return made;
    }

    private static SortedDictionary<string, string> Digest(Dictionary<string, byte[]> made) =>
        new(made.ToDictionary(m => m.Key, m => Convert.ToHexString(SHA256.HashData(m.Value))), StringComparer.Ordinal);

    private static CultureInfo Foreign()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ";";
        culture.NumberFormat.NumberGroupSeparator = "_";
        culture.NumberFormat.NegativeSign = "\u2212";
        culture.NumberFormat.PercentSymbol = "\u066A";
        culture.NumberFormat.NaNSymbol = "none";
        culture.DateTimeFormat.DateSeparator = "~";
        culture.DateTimeFormat.TimeSeparator = "~";
        culture.DateTimeFormat.MonthNames = [.. Enumerable.Range(1, 13).Select(m => $"m{m}")];
        culture.DateTimeFormat.DayNames = [.. Enumerable.Range(1, 7).Select(d => $"d{d}")];
        return culture;
    }
}
