namespace RideAudit.Next;

/// <summary>What a planned ride is ridden on while layouts are judged.</summary>
internal enum Road
{
    /// <summary>Exactly as written.</summary>
    Paper,

    /// <summary>Real roads: a little less of it low, a little more cost.</summary>
    Uneven,

    /// <summary>An uneven road on a day that costs more than the others.</summary>
    Heavy,

    /// <summary>Roads that make days alike: easy rides cost more than they should, hard and long ones no more than written.</summary>
    Levelling,
}
