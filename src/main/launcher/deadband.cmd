@echo off
rem Starts Deadband with the Java that is there.
rem
rem   runtime             the Java to use, where the folder holds one
rem   JAVA_HOME           otherwise the Java to use; otherwise the first java on the PATH
rem   DEADBAND_JAVA_OPTS  further JVM options; they win over the ones below
rem
rem No class archive here: a batch file cannot make one behind the user's back and in one piece.
rem No blocks in brackets either: a path such as "Program Files (x86)" would close them.

setlocal DisableDelayedExpansion
set "jar=%~dp0..\lib\deadband.jar"
if exist "%jar%" goto :find_java
>&2 echo deadband: "%jar%" is missing: unpack the whole folder again, bin and lib together.
exit /b 70

:find_java
set "java=%~dp0..\runtime\bin\java.exe"
if exist "%java%" goto :tune
if not defined JAVA_HOME goto :on_path
set "java=%JAVA_HOME%\bin\java.exe"
if exist "%java%" goto :ask_version
>&2 echo deadband: JAVA_HOME is "%JAVA_HOME%", but there is no bin\java.exe in it. Correct or unset it.
exit /b 70

:on_path
set "java="
for %%j in (java.exe) do set "java=%%~$PATH:j"
if defined java goto :ask_version
>&2 echo deadband: no Java found. Install Java 17 or newer (a JRE is enough), or set JAVA_HOME to where it is.
exit /b 70

:ask_version
set "release="
for %%j in ("%java%") do set "release=%%~dpj..\release"
if not exist "%release%" goto :tune
set "version="
for /f "usebackq tokens=1,2 delims==" %%n in ("%release%") do if "%%n"=="JAVA_VERSION" set "version=%%~o"
set "major="
for /f "tokens=1 delims=.-+" %%m in ("%version%") do set "major=%%m"
if not defined major goto :tune
if %major% geq 17 goto :tune
>&2 echo deadband: Java %version% in "%java%" is too old. Install Java 17 or newer, or set JAVA_HOME to where it is.
exit /b 70

:tune
rem One check is over before the big compiler pays; streams and long simulations want it.
rem (cmd splits --format=jsonl at the sign, so the word jsonl finds it too.)
set "tuning=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
:next_word
if "%~1"=="" goto :collector
if "%~1"=="simulate" set "tuning=-XX:+UseParallelGC"
if "%~1"=="propose" set "tuning=-XX:+UseParallelGC"
if "%~1"=="jsonl" set "tuning=-XX:+UseParallelGC -XX:InlineSmallCode=500 -XX:FreqInlineSize=60"
shift
goto :next_word

:collector
rem Two collectors at once are refused.
if not defined DEADBAND_JAVA_OPTS goto :run
if not "%DEADBAND_JAVA_OPTS:GC=%"=="%DEADBAND_JAVA_OPTS%" set "tuning="

:run
rem Reports are UTF-8; the console is told so, and told back afterwards.
set "page="
for /f "tokens=2 delims=:." %%c in ('chcp 2^>nul') do set "page=%%c"
if defined page chcp 65001 >nul 2>nul
"%java%" %tuning% -Xlog:disable -Xlog:all=error:stderr -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8 %DEADBAND_JAVA_OPTS% -cp "%jar%" deadband.cli.Main %*
set "code=%errorlevel%"
if defined page chcp %page% >nul 2>nul
exit /b %code%
