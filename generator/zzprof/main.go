package main
import ("fmt";"os";"runtime/pprof";"time";"coursebook/calculators/shelf";"coursebook/generator/internal/build";"coursebook/generator/internal/fault";"coursebook/generator/internal/house";"coursebook/generator/internal/output";"syscall")
func cpu() time.Duration { var r syscall.Rusage; syscall.Getrusage(0,&r); return time.Duration(r.Utime.Nano()+r.Stime.Nano()) }
func main(){ h,_:=house.Open(); th,_:=h.Theme(); m,_:=h.Module(); f,_:=os.Create("/tmp/cpu.prof"); pprof.StartCPUProfile(f)
 var fl fault.List; t:=time.Now(); c0:=cpu(); last:=c0
 s:=build.Make(build.Options{Content:os.Args[1],Theme:th,Calculators:shelf.All(),Module:func()([]byte,error){return m,nil},Step:func(w string){ fmt.Println(cpu()-last,"before",w); last=cpu()}},&fl)
 fmt.Println("rest",cpu()-last,"total",cpu()-c0,time.Since(t)); if s==nil { fault.Print(os.Stderr,fl.All()[:min(3,len(fl.All()))]); return }
 c1:=cpu(); if len(os.Args)>2 { output.Publish(os.Args[2],s.Files,s.Release); fmt.Println("publish",cpu()-c1) }
 pprof.StopCPUProfile() }
