using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>The developer fields of a part. Descriptions are found when data are read, by index and number; an application id is optional.</summary>
internal sealed class DeveloperFields
{
    private readonly Dictionary<int, DeveloperDescription> _descriptions = [];
    private readonly Dictionary<byte, string> _applications = [];
    private readonly Dictionary<int, long> _usedByRecords = [];

    /// <summary>Changes whenever a description does.</summary>
    public int Version { get; private set; }

    /// <summary>True if a description of power came after records that use it.</summary>
    public bool PowerCameLate { get; private set; }

    /// <summary>The same descriptions for reading the part once more.</summary>
    public DeveloperFields ForSecondReading()
    {
        DeveloperFields copy = new() { Version = 1 };
        foreach ((var key, var description) in _descriptions)
            copy._descriptions[key] = description;
        return copy;
    }

    /// <summary>A developer_data_id: another application under the same index makes earlier descriptions void, the same or an unnamed one does not.</summary>
    public void Identify(in MessageView message)
    {
        if (message.Byte(3) is not { } index)
            return;
        var id = message.Bytes(1);
        if (id.IsEmpty || !id.ContainsAnyExcept((byte)0xFF))
            return;
        var application = Convert.ToHexString(id);
        if (_applications.TryGetValue(index, out var earlier) && earlier != application)
        {
            foreach (var key in _descriptions.Keys.Where(k => k >> 8 == index).ToArray())
                _descriptions.Remove(key);
            Version++;
        }

        _applications[index] = application;
    }

    /// <summary>A field_description.</summary>
    /// <returns>The description; null if it does not say what it describes.</returns>
    public DeveloperDescription? Describe(in MessageView message)
    {
        if (message.Byte(0) is not { } index || message.Byte(1) is not { } number)
            return null;
        var key = (index << 8) | number;
        var description = DeveloperDescription.Read(message);
        PowerCameLate |= description.IsPower && _usedByRecords.ContainsKey(key) && !_descriptions.ContainsKey(key);
        _descriptions[key] = description;
        Version++;
        return description;
    }

    /// <summary>Notes that data messages use a field.</summary>
    public void NoteUse(int key, long offset) => _usedByRecords.TryAdd(key, offset);

    public bool TryFind(int key, out DeveloperDescription? description) => _descriptions.TryGetValue(key, out description);

    /// <summary>Fields that are used and were never described, with the place of their first use.</summary>
    public IEnumerable<(int Key, long Offset)> Undescribed() =>
        _usedByRecords.Where(use => !_descriptions.ContainsKey(use.Key)).Select(use => (use.Key, use.Value));
}
