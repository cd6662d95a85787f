using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>The developer fields of a part. Descriptions are found when data are read, by index and number; an application id is optional.</summary>
internal sealed class DeveloperFields
{
    private readonly Dictionary<int, DeveloperDescription> descriptions = [];
    private readonly Dictionary<byte, string> applications = [];
    private readonly Dictionary<int, long> usedByRecords = [];

    /// <summary>Changes whenever a description does.</summary>
    public int Version { get; private set; }

    /// <summary>True if a description of power came after records that use it.</summary>
    public bool PowerCameLate { get; private set; }

    /// <summary>The same descriptions for reading the part once more.</summary>
    public DeveloperFields ForSecondReading()
    {
        DeveloperFields copy = new() { Version = 1 };
        foreach ((int key, DeveloperDescription description) in descriptions)
            copy.descriptions[key] = description;
        return copy;
    }

    /// <summary>A developer_data_id: another application under the same index makes earlier descriptions void, the same or an unnamed one does not.</summary>
    public void Identify(in MessageView message)
    {
        if (message.Byte(3) is not { } index)
            return;
        ReadOnlySpan<byte> id = message.Bytes(1);
        if (id.IsEmpty || !id.ContainsAnyExcept((byte)0xFF))
            return;
        string application = Convert.ToHexString(id);
        if (applications.TryGetValue(index, out string? earlier) && earlier != application)
        {
            foreach (int key in descriptions.Keys.Where(k => k >> 8 == index).ToArray())
                descriptions.Remove(key);
            Version++;
        }

        applications[index] = application;
    }

    /// <summary>A field_description.</summary>
    /// <returns>The description; null if it does not say what it describes.</returns>
    public DeveloperDescription? Describe(in MessageView message)
    {
        if (message.Byte(0) is not { } index || message.Byte(1) is not { } number)
            return null;
        int key = (index << 8) | number;
        DeveloperDescription description = DeveloperDescription.Read(message);
        PowerCameLate |= description.IsPower && usedByRecords.ContainsKey(key) && !descriptions.ContainsKey(key);
        descriptions[key] = description;
        Version++;
        return description;
    }

    /// <summary>Notes that data messages use a field.</summary>
    public void NoteUse(int key, long offset) => usedByRecords.TryAdd(key, offset);

    public bool TryFind(int key, out DeveloperDescription? description) => descriptions.TryGetValue(key, out description);

    /// <summary>Fields that are used and were never described, with the place of their first use.</summary>
    public IEnumerable<(int Key, long Offset)> Undescribed() =>
        usedByRecords.Where(use => !descriptions.ContainsKey(use.Key)).Select(use => (use.Key, use.Value));
}
