-- The tables and statements with which Orleans' ADO.NET providers for clustering and storage work on PostgreSQL. Names of statements and parameters are the providers'; the rest is ours.
-- A change of the list of silos counts only with the version that was read, and makes the next one: in one statement, behind the lock on the version's row.
CREATE TABLE IF NOT EXISTS OrleansQuery (
  QueryKey text NOT NULL PRIMARY KEY,
  QueryText text NOT NULL
);
CREATE TABLE IF NOT EXISTS SiloListVersion (
  DeploymentId text NOT NULL PRIMARY KEY,
  Version integer NOT NULL
);
CREATE TABLE IF NOT EXISTS Silo (
  DeploymentId text NOT NULL,
  Address text NOT NULL,
  Port integer NOT NULL,
  Generation integer NOT NULL,
  SiloName text NOT NULL,
  HostName text NOT NULL,
  Status integer NOT NULL,
  ProxyPort integer NOT NULL,
  SuspectTimes text NULL,
  StartTime timestamptz NOT NULL,
  IAmAliveTime timestamptz NOT NULL,
  PRIMARY KEY (DeploymentId, Address, Port, Generation)
);
CREATE TABLE IF NOT EXISTS GrainState (
  ServiceId text NOT NULL,
  GrainTypeString text NOT NULL,
  GrainIdN0 bigint NOT NULL,
  GrainIdN1 bigint NOT NULL,
  GrainIdExtensionString text NOT NULL,
  Payload bytea NULL,
  Version integer NOT NULL,
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
WITH made AS (INSERT INTO SiloListVersion (DeploymentId, Version) VALUES (@DeploymentId, 0) ON CONFLICT DO NOTHING RETURNING 1)
SELECT count(*) > 0 FROM made;

-- query UpdateIAmAlivetimeKey
UPDATE Silo SET IAmAliveTime = @IAmAliveTime WHERE DeploymentId = @DeploymentId AND Address = @Address AND Port = @Port AND Generation = @Generation;

-- query InsertMembershipKey
WITH next AS (UPDATE SiloListVersion SET Version = Version + 1 WHERE DeploymentId = @DeploymentId AND Version = @Version
  AND NOT EXISTS (SELECT 1 FROM Silo WHERE DeploymentId = @DeploymentId AND Address = @Address AND Port = @Port AND Generation = @Generation) RETURNING 1),
made AS (INSERT INTO Silo (DeploymentId, Address, Port, Generation, SiloName, HostName, Status, ProxyPort, StartTime, IAmAliveTime)
  SELECT @DeploymentId, @Address, @Port, @Generation, @SiloName, @HostName, @Status, @ProxyPort, @StartTime, @IAmAliveTime FROM next RETURNING 1)
SELECT count(*) > 0 FROM made;

-- query UpdateMembershipKey
WITH next AS (UPDATE SiloListVersion SET Version = Version + 1 WHERE DeploymentId = @DeploymentId AND Version = @Version RETURNING 1),
made AS (UPDATE Silo SET Status = @Status, SuspectTimes = @SuspectTimes, IAmAliveTime = @IAmAliveTime
  WHERE DeploymentId = @DeploymentId AND Address = @Address AND Port = @Port AND Generation = @Generation AND EXISTS (SELECT 1 FROM next) RETURNING 1)
SELECT count(*) > 0 FROM made;

-- query DeleteMembershipTableEntriesKey
WITH gone AS (DELETE FROM Silo WHERE DeploymentId = @DeploymentId)
DELETE FROM SiloListVersion WHERE DeploymentId = @DeploymentId;

-- query CleanupDefunctSiloEntriesKey
DELETE FROM Silo WHERE DeploymentId = @DeploymentId AND Status <> 3 AND IAmAliveTime < @IAmAliveTime;

-- query ReadFromStorageKey
SELECT Payload AS PayloadBinary, Version FROM GrainState
WHERE ServiceId = @ServiceId AND GrainTypeString = @GrainTypeString AND GrainIdN0 = @GrainIdN0 AND GrainIdN1 = @GrainIdN1 AND GrainIdExtensionString = COALESCE(@GrainIdExtensionString::text, '');

-- query WriteToStorageKey
INSERT INTO GrainState (ServiceId, GrainTypeString, GrainIdN0, GrainIdN1, GrainIdExtensionString, Payload, Version)
VALUES (@ServiceId, @GrainTypeString, @GrainIdN0, @GrainIdN1, COALESCE(@GrainIdExtensionString::text, ''), @PayloadBinary, 1)
ON CONFLICT (ServiceId, GrainTypeString, GrainIdN0, GrainIdN1, GrainIdExtensionString)
DO UPDATE SET Payload = excluded.Payload, Version = GrainState.Version + 1 WHERE GrainState.Version = @GrainStateVersion::integer
RETURNING Version AS NewGrainStateVersion;

-- query ClearStorageKey
UPDATE GrainState SET Payload = NULL, Version = Version + 1
WHERE ServiceId = @ServiceId AND GrainTypeString = @GrainTypeString AND GrainIdN0 = @GrainIdN0 AND GrainIdN1 = @GrainIdN1 AND GrainIdExtensionString = COALESCE(@GrainIdExtensionString::text, '')
AND Version = @GrainStateVersion::integer
RETURNING Version AS NewGrainStateVersion;
