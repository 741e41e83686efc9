-- The tables and statements with which Orleans' ADO.NET providers for clustering and storage work on a SQLite file. Names of statements and parameters are the providers'; the rest is ours.
-- A change of the list of silos counts only with the version that was read, and makes the next one: in one transaction, begun for writing.
CREATE TABLE IF NOT EXISTS OrleansQuery (
  QueryKey TEXT NOT NULL PRIMARY KEY,
  QueryText TEXT NOT NULL
);
CREATE TABLE IF NOT EXISTS SiloListVersion (
  DeploymentId TEXT NOT NULL PRIMARY KEY,
  Version INTEGER NOT NULL
);
CREATE TABLE IF NOT EXISTS Silo (
  DeploymentId TEXT NOT NULL,
  Address TEXT NOT NULL,
  Port INTEGER NOT NULL,
  Generation INTEGER NOT NULL,
  SiloName TEXT NOT NULL,
  HostName TEXT NOT NULL,
  Status INTEGER NOT NULL,
  ProxyPort INTEGER NOT NULL,
  SuspectTimes TEXT NULL,
  StartTime TEXT NOT NULL,
  IAmAliveTime TEXT NOT NULL,
  PRIMARY KEY (DeploymentId, Address, Port, Generation)
);
CREATE TABLE IF NOT EXISTS GrainState (
  ServiceId TEXT NOT NULL,
  GrainTypeString TEXT NOT NULL,
  GrainIdN0 INTEGER NOT NULL,
  GrainIdN1 INTEGER NOT NULL,
  GrainIdExtensionString TEXT NOT NULL,
  Payload BLOB NULL,
  Version INTEGER NOT NULL,
  PRIMARY KEY (ServiceId, GrainTypeString, GrainIdN0, GrainIdN1, GrainIdExtensionString)
);

-- query GatewaysQueryKey
SELECT Address, ProxyPort, Generation FROM Silo WHERE DeploymentId = @DeploymentId AND Status = @Status AND ProxyPort > 0;

-- query MembershipReadRowKey
SELECT v.Version, s.Address, s.Port, s.Generation, s.SiloName, s.HostName, s.Status, s.ProxyPort, s.SuspectTimes, s.StartTime, s.IAmAliveTime
FROM SiloListVersion v LEFT JOIN Silo s ON s.DeploymentId = v.DeploymentId AND s.Address = @Address AND s.Port = @Port AND s.Generation = @Generation
WHERE v.DeploymentId = @DeploymentId;

-- query MembershipReadAllKey
SELECT v.Version, s.Address, s.Port, s.Generation, s.SiloName, s.HostName, s.Status, s.ProxyPort, s.SuspectTimes, s.StartTime, s.IAmAliveTime
FROM SiloListVersion v LEFT JOIN Silo s ON s.DeploymentId = v.DeploymentId
WHERE v.DeploymentId = @DeploymentId;

-- query InsertMembershipVersionKey
INSERT OR IGNORE INTO SiloListVersion (DeploymentId, Version) VALUES (@DeploymentId, 0);
SELECT changes();

-- query UpdateIAmAlivetimeKey
UPDATE Silo SET IAmAliveTime = @IAmAliveTime WHERE DeploymentId = @DeploymentId AND Address = @Address AND Port = @Port AND Generation = @Generation;

-- query InsertMembershipKey
BEGIN IMMEDIATE;
INSERT OR IGNORE INTO Silo (DeploymentId, Address, Port, Generation, SiloName, HostName, Status, ProxyPort, StartTime, IAmAliveTime)
SELECT @DeploymentId, @Address, @Port, @Generation, @SiloName, @HostName, @Status, @ProxyPort, @StartTime, @IAmAliveTime
WHERE EXISTS (SELECT 1 FROM SiloListVersion WHERE DeploymentId = @DeploymentId AND Version = @Version);
UPDATE SiloListVersion SET Version = Version + 1 WHERE DeploymentId = @DeploymentId AND Version = @Version AND changes() > 0;
COMMIT;
SELECT changes();

-- query UpdateMembershipKey
BEGIN IMMEDIATE;
UPDATE Silo SET Status = @Status, SuspectTimes = @SuspectTimes, IAmAliveTime = @IAmAliveTime
WHERE DeploymentId = @DeploymentId AND Address = @Address AND Port = @Port AND Generation = @Generation
AND EXISTS (SELECT 1 FROM SiloListVersion WHERE DeploymentId = @DeploymentId AND Version = @Version);
UPDATE SiloListVersion SET Version = Version + 1 WHERE DeploymentId = @DeploymentId AND Version = @Version AND changes() > 0;
COMMIT;
SELECT changes();

-- query DeleteMembershipTableEntriesKey
DELETE FROM Silo WHERE DeploymentId = @DeploymentId;
DELETE FROM SiloListVersion WHERE DeploymentId = @DeploymentId;

-- query CleanupDefunctSiloEntriesKey
DELETE FROM Silo WHERE DeploymentId = @DeploymentId AND Status <> 3 AND IAmAliveTime < @IAmAliveTime;

-- query ReadFromStorageKey
SELECT Payload AS PayloadBinary, Version FROM GrainState
WHERE ServiceId = @ServiceId AND GrainTypeString = @GrainTypeString AND GrainIdN0 = @GrainIdN0 AND GrainIdN1 = @GrainIdN1 AND GrainIdExtensionString = COALESCE(@GrainIdExtensionString, '');

-- query WriteToStorageKey
INSERT INTO GrainState (ServiceId, GrainTypeString, GrainIdN0, GrainIdN1, GrainIdExtensionString, Payload, Version)
VALUES (@ServiceId, @GrainTypeString, @GrainIdN0, @GrainIdN1, COALESCE(@GrainIdExtensionString, ''), @PayloadBinary, 1)
ON CONFLICT DO UPDATE SET Payload = @PayloadBinary, Version = Version + 1 WHERE Version = @GrainStateVersion
RETURNING Version AS NewGrainStateVersion;

-- query ClearStorageKey
UPDATE GrainState SET Payload = NULL, Version = Version + 1
WHERE ServiceId = @ServiceId AND GrainTypeString = @GrainTypeString AND GrainIdN0 = @GrainIdN0 AND GrainIdN1 = @GrainIdN1 AND GrainIdExtensionString = COALESCE(@GrainIdExtensionString, '')
AND Version = @GrainStateVersion
RETURNING Version AS NewGrainStateVersion;
