namespace LowVoltage.Calc.Ampacity;

/// <summary>Finding the row of a stepped table; keys ascend.</summary>
internal static class Steps
{
    /// <summary>The last key that is not above the value; −1 when all are.</summary>
    internal static int AtMost(double[] keys, double value)
    {
        int index = keys.Length - 1;
        while (index >= 0 && !(keys[index] <= value))
        {
            index--;
        }

        return index;
    }

    /// <summary>The first key that is not below the value; −1 when all are.</summary>
    internal static int AtLeast(double[] keys, double value)
    {
        for (int i = 0; i < keys.Length; i++)
        {
            if (keys[i] >= value)
            {
                return i;
            }
        }

        return -1;
    }
}
