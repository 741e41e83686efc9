Console.Error.WriteLine($"{LowVoltage.Calc.Bridge.Example.Target()} on {Environment.Version}");
LowVoltage.Calc.Bridge.Example.Run();
